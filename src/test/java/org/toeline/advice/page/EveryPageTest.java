package org.toeline.advice.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Advice;
import org.toeline.advice.Finding;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Provenance;
import org.toeline.advice.Range;
import org.toeline.advice.Topic;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/**
 * Property: for every reading, direction, club and hand there is a whole page, and all of it speaks of that reading, that
 * direction and that club. What each must and must not say is written down here by hand, apart from the phrases.
 */
class EveryPageTest {

    /** One combination. */
    private record Case(ReadingKind kind, Verdict out, Club club, Handedness hand, Words words) {

        Finding finding() {
            double value = out == Verdict.OUT_LOW ? -2 : 2;
            return new Finding(
                    new Reading(kind, value, new Normal(value, 0.1), Source.MARKS),
                    Optional.of(new Range(kind, java.util.Set.of(club), -1, 1, 0, Provenance.COACHS_OWN, "test", "")),
                    Optional.of(out));
        }

        PlayerWords player() {
            return new PlayerWords(
                    words, hand, club, new Advice(List.of(finding()), Optional.empty(), Optional.empty()));
        }

        String say(Part part) {
            return player().say(part, finding());
        }

        @Override
        public String toString() {
            return String.join(" ", kind.id(), out.id(), club.id(), hand.id(), words.language());
        }
    }

    private static List<Case> all() {
        List<Case> all = new ArrayList<>();
        for (Locale language : Words.languages()) {
            Words words = Words.of(language, LengthUnit.CENTIMETRE);
            for (ReadingKind kind : ReadingKind.values()) {
                for (Verdict out : List.of(Verdict.OUT_LOW, Verdict.OUT_HIGH)) {
                    for (Club club : Club.values()) {
                        for (Handedness hand : Handedness.values()) {
                            all.add(new Case(kind, out, club, hand, words));
                        }
                    }
                }
            }
        }
        return all;
    }

    /** What an instruction says, by topic: too low, then too high; English and German. */
    private static final Map<Topic, List<List<String>>> WAYS = Map.ofEntries(
            way(Topic.TEE, "higher", "höher", "lower", "tiefer"),
            way(
                    Topic.BALL,
                    "forward, towards the target",
                    "nach vorn, zum Ziel",
                    "back, away from",
                    "zurück, vom Ziel"),
            way(Topic.LEAD_FOOT, "outwards, towards", "außen, zum Ziel", "inwards, away", "innen, vom Ziel"),
            way(Topic.STANCE, "wider", "breiter", "narrower", "enger"),
            way(Topic.FEET, "LEAD foot back", "LEADen Fuß", "TRAIL foot back", "TRAILen Fuß"),
            way(Topic.SHOULDERS, "to the LEAD", "nach LEADs", "to the TRAIL", "nach TRAILs"),
            way(Topic.TILT, "sink", "sinken", "rise", "steigen"),
            way(Topic.TRAIL_HAND, "lower on the grip", "tiefer", "higher on the grip", "höher"),
            way(Topic.SIDE_BEND, "away from the target", "vom Ziel weg", "towards the target", "zum Ziel hin"),
            way(Topic.HEAD, "towards the target", "zum Ziel hin", "away from the target", "vom Ziel weg"),
            way(Topic.SHAFT, "towards the target", "zum Ziel hin", "away from the target", "vom Ziel weg"),
            way(Topic.FORWARD_BEND, "more forward", "weiter vor", "Stand up", "auf"),
            way(Topic.KNEE, "Soften", "Gib", "Straighten", "Strecke"),
            way(Topic.BALL_DISTANCE, "farther from the ball", "weiter weg", "nearer to the ball", "näher"),
            way(Topic.HANDS, "farther", "weiter weg", "nearer", "näher"),
            way(Topic.LEAD_FLARE, "out a little, towards", "außen, zum Ziel", "in a little, away", "innen, vom Ziel"),
            way(Topic.TRAIL_FLARE, "out a little, away", "außen, vom Ziel", "in a little, towards", "innen, zum Ziel"));

    private static Map.Entry<Topic, List<List<String>>> way(
            Topic topic, String low, String niedrig, String high, String hoch) {
        return Map.entry(topic, List.of(List.of(low, niedrig), List.of(high, hoch)));
    }

    /** What every part but the flight of the ball names, by topic. */
    private static final Map<Topic, String> THINGS = Map.ofEntries(
            Map.entry(Topic.TEE, "tee|ball|Tee|Ball"),
            Map.entry(Topic.BALL, "ball|Ball"),
            Map.entry(Topic.LEAD_FOOT, "foot|heel|leg|Fuß|Ferse|Bein"),
            Map.entry(Topic.STANCE, "stance|[Ss]tand|heels|hips|Stand|[Ss]teh|Fersen|Hüften"),
            Map.entry(Topic.FEET, "[Ff]eet|foot|toes|aim|Füße|Fuß|zielen"),
            Map.entry(Topic.SHOULDERS, "shoulder|Schulter"),
            Map.entry(Topic.TILT, "shoulder|tilt|side|Schulter|Seite"),
            Map.entry(Topic.TRAIL_HAND, "[Hh]and|[Gg]reif"),
            Map.entry(Topic.SIDE_BEND, "[Ll]ean|breastbone|upper body|Oberkörper|[Nn]eig|Brustbein"),
            Map.entry(Topic.HEAD, "head|nose|look|Kopf|Nase|siehst"),
            Map.entry(Topic.SHAFT, "hands|shaft|Hände|Schaft"),
            Map.entry(
                    Topic.FORWARD_BEND,
                    "[Bb]en[dt]|upright|arms|hips|seat|taller|gebeugt|aufrecht|Beug|beug|Arme|Hüfte|Gesäß"),
            Map.entry(Topic.KNEE, "knee|jump|leg|Knie|springen|Bein"),
            Map.entry(Topic.BALL_DISTANCE, "ball|near|far|arm|room|Ball|nah|weit|Arm|Händen"),
            Map.entry(Topic.HANDS, "[Hh]and|arms|Hände|Arme"),
            Map.entry(Topic.LEAD_FLARE, "foot|Fuß"),
            Map.entry(Topic.TRAIL_FLARE, "foot|hips|Fuß|Hüften"));

    private static String sides(String text, Case c) {
        boolean right = c.hand == Handedness.RIGHT;
        boolean german = c.words.language().equals("de");
        String left = german ? "link" : "left";
        String other = german ? "recht" : "right";
        return text.replace("LEAD", right ? left : other).replace("TRAIL", right ? other : left);
    }

    @Test
    void everyPartIsThereAndSpeaksOfItsThing() {
        for (Case c : all()) {
            Pattern thing = Pattern.compile(THINGS.get(Topic.of(c.kind)));
            for (Part part : Part.values()) {
                String said = c.say(part);
                assertThat(said)
                        .as(c + " " + part)
                        .isNotBlank()
                        .doesNotContain("{")
                        .doesNotContain("  ");
                if (part != Part.FLIGHT && !said.contains("track")) {
                    assertThat(thing.matcher(said).find())
                            .as(c + " " + part + ": " + said)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void theInstructionGoesTheRightWay() {
        for (Case c : all()) {
            int high = c.out == Verdict.OUT_HIGH ? 1 : 0;
            int german = c.words.language().equals("de") ? 1 : 0;
            List<List<String>> ways = WAYS.get(Topic.of(c.kind));
            assertThat(c.say(Part.DO))
                    .as(c.toString())
                    .contains(sides(ways.get(high).get(german), c));
            assertThat(c.say(Part.DO))
                    .as(c.toString())
                    .doesNotContain(sides(ways.get(1 - high).get(german), c));
        }
    }

    /** No reason, feel or fault of one direction is that of the other, and a drill has a dose and ends with a film. */
    @Test
    void directionsDifferAndDrillsHaveADose() {
        for (Case c : all()) {
            Case other = new Case(
                    c.kind, c.out == Verdict.OUT_LOW ? Verdict.OUT_HIGH : Verdict.OUT_LOW, c.club, c.hand, c.words);
            for (Part part : List.of(Part.SO, Part.DO, Part.WHY, Part.FEEL)) {
                assertThat(c.say(part)).as(c + " " + part).isNotEqualTo(other.say(part));
            }
            assertThat(c.say(Part.DRILL))
                    .as(c.toString())
                    .containsPattern(c.words.language().equals("de") ? "zehn.*film" : "ten.*film");
            assertThat(c.say(Part.SO)).as(c.toString()).doesNotEndWith(".");
        }
    }

    /** Common practice: a driver is met level or rising, irons and wedges strike down; other clubs are not named. */
    @Test
    void nothingIsSaidOfAnotherClub() {
        for (Case c : all()) {
            ClubKind kind = ClubKind.of(c.club);
            for (Part part : Part.values()) {
                String said = c.say(part);
                if (kind != ClubKind.DRIVER) {
                    assertThat(said).as(c + " " + part).doesNotContainPattern("[Dd]river|rising|aufwärts");
                    assertThat(said).as(c + " " + part).doesNotContain("half of it", "die Hälfte");
                }
                if (kind != ClubKind.IRON) {
                    assertThat(said).as(c + " " + part).doesNotContainPattern("\\b[Ii]rons?\\b|Eisen");
                }
                if (kind != ClubKind.WEDGE) {
                    assertThat(said).as(c + " " + part).doesNotContain("edge ");
                }
            }
            if (Topic.of(c.kind) == Topic.BALL && kind != ClubKind.DRIVER) {
                assertThat(c.say(Part.CHECK)).as(c.toString()).doesNotContainPattern("shoulder|Schulter");
            }
        }
    }

    /** What is seen from the front is not checked side-on, and the other way round. */
    @Test
    void theMirrorStandsWhereItIsSeen() {
        List<Topic> sideOn = List.of(Topic.FORWARD_BEND, Topic.KNEE, Topic.HANDS);
        for (Case c : all()) {
            String check = c.say(Part.CHECK);
            if (check.contains("irror") || check.contains("piegel")) {
                assertThat(check.contains("ide-on") || check.contains("eitlich"))
                        .as(c + ": " + check)
                        .isEqualTo(sideOn.contains(Topic.of(c.kind)));
            }
        }
    }

    /** Shoulders are held against that which the reading holds them against, in every part that says what against. */
    @Test
    void shouldersAreHeldAgainstTheReadingsOwnLine() {
        for (Case c : all()) {
            boolean target = c.kind == ReadingKind.SHOULDERS_TO_TARGET;
            if (target || c.kind == ReadingKind.SHOULDERS_TO_FEET) {
                for (Part part : List.of(Part.DO, Part.CHECK, Part.DRILL)) {
                    assertThat(Pattern.compile("target|Ziel")
                                    .matcher(c.say(part))
                                    .find())
                            .as(c + " " + part)
                            .isEqualTo(target);
                }
            }
        }
    }

    /** Common practice: a putt rolls, it neither flies nor curves in the air. */
    @Test
    void nothingIsSaidOfAPuttThatOnlyFlies() {
        for (Case c : all()) {
            if (c.club == Club.PUTTER && Topic.of(c.kind) != Topic.TEE) {
                assertThat(c.say(Part.FLIGHT))
                        .as(c.toString())
                        .doesNotContainPattern("curve|thin|dreht sich|dünn|fl(y|ies|iegt)|high|hoch|low|flach");
            }
        }
    }

    /** A check says what should be seen, with “should” or its like. */
    @Test
    void everyCheckSaysWhatShouldBeSeen() {
        for (Case c : all()) {
            assertThat(c.say(Part.CHECK)).as(c.toString()).containsPattern("should|sollte|Der Ball sitzt dann");
        }
    }

    /** A hand of the player is never called by the other hand's name: exchanging hands exchanges the sides and no more. */
    @Test
    void handsAreMirrorImages() {
        for (Case c : all()) {
            if (c.hand == Handedness.RIGHT) {
                Case other = new Case(c.kind, c.out, c.club, Handedness.LEFT, c.words);
                for (Part part : Part.values()) {
                    assertThat(exchanged(c.say(part))).as(c + " " + part).isEqualTo(other.say(part));
                }
            }
        }
    }

    private static String exchanged(String text) {
        return text.replaceAll("\\bleft\\b", "\u0001")
                .replaceAll("\\bright\\b(?! (?:height|distance|place))", "left")
                .replace("\u0001", "right")
                .replaceAll("\\blink(?=s|e)", "\u0001")
                .replaceAll("\\brecht(?=s\\b|e[nrs]?\\b)", "link")
                .replace("\u0001", "recht");
    }

    /** Amounts are widths of what one has at hand, never degrees or centimetres. */
    @Test
    void amountsCanBeDosed() {
        for (Case c : all()) {
            assertThat(c.say(Part.DO)).as(c.toString()).doesNotContainPattern("°|\\bcm\\b|\\d");
        }
    }
}
