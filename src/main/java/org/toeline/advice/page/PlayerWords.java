package org.toeline.advice.page;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Range;
import org.toeline.advice.Topic;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.reading.ReadingKind;

/**
 * A finding in the words of the one it is about: left and right, widths of a ball or a hand, no jargon. Only what is out of
 * range is called a fault or gets an instruction. Immutable; any thread.
 */
public final class PlayerWords {

    /** How likely it must be to be said without a “very likely”. */
    private static final double SURELY = 0.999;

    private static final double UNDER_THE_SHOULDER_M = 0.02;
    private static final double UP_TO_MIDDLE = 0.52;
    private static final double UP_TO_AHEAD = 0.67;
    private static final double UP_TO_HALFWAY = 0.84;

    private final Words words;
    private final Handedness handedness;
    private final ClubKind club;
    private final Advice advice;

    public PlayerWords(Words words, Handedness handedness, Club club, Advice advice) {
        this.words = words;
        this.handedness = handedness;
        this.club = ClubKind.of(club);
        this.advice = advice;
    }

    public static PlayerWords of(Words words, Assessment assessment) {
        return new PlayerWords(
                words, assessment.sheet().handedness(), assessment.sheet().club(), assessment.advice());
    }

    /** A reading's name, with the player's own sides. */
    public String name(ReadingKind kind) {
        return filled("name." + kind.id(), Map.of());
    }

    /** The same within a sentence. */
    public String nameInSentence(ReadingKind kind) {
        return words.inSentence(words.filled("name." + kind.id(), name -> side(name.toLowerCase(Locale.ROOT))));
    }

    /** What the lower end of a reading's scale means. */
    public String lowEnd(ReadingKind kind) {
        return filled("end." + Topic.of(kind).id() + ".low", Map.of());
    }

    /** What the upper end of a reading's scale means. */
    public String highEnd(ReadingKind kind) {
        return filled("end." + Topic.of(kind).id() + ".high", Map.of());
    }

    /** What is wrong, without figures. */
    public String fault(Finding finding) {
        return say(Part.SO, finding);
    }

    /** What to do. */
    public String instruction(Finding finding) {
        return say(Part.DO, finding);
    }

    /** What is right now and was not before. */
    public String now(ReadingKind kind) {
        return filled(
                Stream.of("now." + kind.id() + "." + club.id(), "now." + kind.id())
                        .filter(words::has)
                        .findFirst()
                        .orElse("now." + Topic.of(kind).id()),
                Map.of());
    }

    /** A part of the page of a finding that is out of range. */
    public String say(Part part, Finding finding) {
        Verdict out = finding.verdict()
                .filter(Verdict::isOut)
                .orElseThrow(() -> new IllegalStateException(
                        finding.kind().id() + " is not out of range; only what is out has a page"));
        Map<String, String> filling = new HashMap<>();
        Optional<Dose> dose = Dose.of(finding, advice);
        filling.put("amount", words.text(dose.map(Dose::key).orElse("amount.little")));
        filling.put("place", place(finding));
        filling.put(
                "until",
                dose.filter(Dose::isCapped).isPresent() ? filled("until.most", Map.of()) : until(finding, out));
        return filled(key(part, finding.kind(), out), filling);
    }

    /** The key of the most particular phrase there is. */
    String key(Part part, ReadingKind kind, Verdict out) {
        return key(part.id(), kind, out)
                .orElseThrow(() -> new IllegalStateException("the pages lack " + part.id() + "." + kind.id()));
    }

    private Optional<String> key(String part, ReadingKind kind, Verdict out) {
        String reading = part + "." + kind.id();
        String topic = part + "." + Topic.of(kind).id();
        String direction = "." + out.id();
        String ofClub = "." + club.id();
        return Stream.of(reading, topic)
                .flatMap(of -> Stream.of(of + direction + ofClub, of + direction, of + ofClub, of))
                .filter(words::has)
                .findFirst();
    }

    /** Where in the stance the ball belongs with this club, by the range of the ball in the stance where there is one. */
    private String place(Finding finding) {
        OptionalDouble aim = Stream.of(Optional.of(finding), advice.finding(ReadingKind.BALL_IN_STANCE))
                .flatMap(Optional::stream)
                .filter(f -> f.kind() == ReadingKind.BALL_IN_STANCE)
                .flatMap(f -> f.range().stream())
                .mapToDouble(Range::aim)
                .findFirst();
        double share = aim.orElse(
                switch (club) {
                    case DRIVER -> 0.9;
                    case WOOD -> 0.76;
                    case IRON, PUTTER -> 0.58;
                    case WEDGE -> 0.48;
                });
        String place = share < UP_TO_MIDDLE
                ? "middle"
                : share < UP_TO_AHEAD ? "ahead" : share < UP_TO_HALFWAY ? "halfway" : "heel";
        return filled("place." + place, Map.of());
    }

    private String until(Finding finding, Verdict out) {
        boolean elsewhere = finding.kind() == ReadingKind.BALL_TO_LEAD_SHOULDER
                && Math.abs(finding.range().orElseThrow().aim()) > UNDER_THE_SHOULDER_M;
        return elsewhere
                ? ""
                : key("until", finding.kind(), out)
                        .map(key -> filled(key, Map.of("place", place(finding))))
                        .orElse("");
    }

    /** How sure it is, for a layman. */
    public String sure(Finding finding) {
        return words.text(
                switch (finding.verdict().orElse(Verdict.TOO_CLOSE)) {
                    case IN_RANGE, OUT_LOW, OUT_HIGH -> chance(finding) >= SURELY ? "sure.surely" : "sure.very-likely";
                    case CANNOT_TELL -> "sure.cannot-tell";
                    default -> "sure.too-close";
                });
    }

    private static double chance(Finding finding) {
        Range range = finding.range().orElseThrow();
        double below = finding.reading().spread().probabilityBelow(range.low());
        double above = 1 - finding.reading().spread().probabilityBelow(range.high());
        return switch (finding.verdict().orElseThrow()) {
            case OUT_LOW -> below;
            case OUT_HIGH -> above;
            default -> 1 - below - above;
        };
    }

    /** The figures behind it, for small type; only for a judged finding. */
    public String small(Finding finding) {
        Range range = finding.range().orElseThrow();
        return words.text("sure.small", words.figure(finding), words.recommended(range));
    }

    /** What is out of range and may follow from the first thing, one a topic and none of its own. */
    public List<Finding> mayFollow(FirstThing first) {
        Set<Topic> said = EnumSet.of(Topic.of(first.finding().kind()));
        return first.mayFollow().stream()
                .flatMap(k -> advice.finding(k).stream())
                .filter(f -> said.add(Topic.of(f.kind())))
                .toList();
    }

    /** Things to see to another time: faults that do not follow from the first one, one a topic, at most two. */
    public List<Finding> nextTime() {
        return advice.first().map(first -> Other.of(advice, first)).orElse(List.of());
    }

    private String filled(String key, Map<String, String> filling) {
        return words.filled(key, name -> {
            String given = filling.get(name);
            return given != null
                    ? given
                    : Character.isUpperCase(name.charAt(0))
                            ? Words.sentenceCase(side(name.toLowerCase(Locale.ROOT)))
                            : side(name);
        });
    }

    private String side(String name) {
        return words.text("slot." + name + "." + handedness.id());
    }
}
