package org.toeline.advice;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.toeline.geometry.GolfBall;
import org.toeline.language.Language;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Doubt;
import org.toeline.posture.Source;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Unit;

/**
 * Findings in plain words, from the resource bundle {@code words}. A sentence never claims more than its verdict: a
 * side is named only when the 95 % interval has one side, a fault only when it is out of range. Immutable; any thread.
 */
public final class Words {

    private static final int MOST_HALVES = 12;

    private final Wording wording;
    private final Figures figures;
    private final Locale locale;
    private final LengthUnit lengthUnit;

    private Words(Locale locale, LengthUnit lengthUnit, Phrases phrases) {
        this.wording = new Wording(locale, phrases);
        this.figures = new Figures(locale, lengthUnit);
        this.locale = locale;
        this.lengthUnit = lengthUnit;
    }

    /** Words in the person's language, centimetres. */
    public static Words usual() {
        return of(Language.now(), LengthUnit.CENTIMETRE);
    }

    /** English words, centimetres. */
    public static Words english() {
        return of(Locale.ENGLISH, LengthUnit.CENTIMETRE);
    }

    /** Words of the locale's language, English where it has none; numbers as that locale writes them. */
    public static Words of(Locale locale, LengthUnit lengthUnit) {
        return new Words(locale, lengthUnit, Phrases.NONE);
    }

    /** With a coach's own phrases where they can take the place of shipped ones. */
    public Words with(Phrases own) {
        return new Words(locale, lengthUnit, own);
    }

    /** The languages there are words in, English first. */
    public static List<Locale> languages() {
        return Language.all();
    }

    /** The language of the words, for documents that state it; a BCP 47 tag. */
    public String language() {
        return wording.language();
    }

    public LengthUnit lengthUnit() {
        return lengthUnit;
    }

    /** The locale whose numbers are written. */
    public Locale locale() {
        return locale;
    }

    /** Any phrase, with {0}, {1} … filled in. */
    public String text(String key, String... arguments) {
        return wording.text(key, arguments);
    }

    public String name(ReadingKind kind) {
        return text("reading." + kind.id());
    }

    public String name(Landmark landmark) {
        return text("landmark." + landmark.id());
    }

    /** Where to click, in a coach's words. */
    public String where(Landmark landmark) {
        return text("where." + landmark.id());
    }

    public String name(View view) {
        return text("view." + view.id());
    }

    public String name(Club club) {
        return text("club." + club.id());
    }

    public String verdict(Verdict verdict) {
        return text("verdict." + verdict.id());
    }

    public String verdict(Finding finding) {
        return finding.verdict().map(this::verdict).orElseGet(() -> text("verdict.none"));
    }

    /** The figure with its sign and the half width of its 95 % interval, such as “+12.1 ± 1.3 cm”. */
    public String figure(Reading reading) {
        return figure(reading.kind(), reading.value(), reading.low(), reading.high(), Optional.empty());
    }

    /** The same, written so that it agrees with the verdict. */
    public String figure(Finding finding) {
        Reading r = finding.reading();
        return figure(r.kind(), r.value(), r.low(), r.high(), finding.range());
    }

    /** The same of metres, radians or plain number: the one way in which figures are written for people. */
    public String figure(ReadingKind kind, double value, double low, double high, Optional<Range> range) {
        Written w = figures.written(kind.unit(), value, low, high, range);
        return written(kind.unit(), w, w.value() > 0 && twoSided(kind));
    }

    /** The same for a value and half its interval, of metres, radians or plain number. */
    public String figure(ReadingKind kind, double inside, double halfInside) {
        return figure(kind, inside, inside - halfInside, inside + halfInside, Optional.empty());
    }

    /** A difference between two of them, which always has its sign. */
    public String difference(ReadingKind kind, double inside, double halfInside) {
        Written w = figures.written(kind.unit(), inside, inside - halfInside, inside + halfInside, Optional.empty());
        return written(kind.unit(), w, w.value() > 0);
    }

    private String written(Unit unit, Written w, boolean withPlus) {
        String sign = withPlus ? "+" : "";
        String value = sign + figures.number(w.value(), w.decimals());
        return w.half()
                .map(half -> text("figure", value, figures.number(half, w.decimals()), text(figures.unitKey(unit))))
                .orElseGet(() -> text(
                        "figure.between",
                        value,
                        figures.number(w.low(), w.decimals()),
                        figures.number(w.high(), w.decimals()),
                        text(figures.unitKey(unit))));
    }

    /** A name within a sentence, where English has small letters. */
    public String inSentence(String name) {
        return text("list.further", name, name.toLowerCase(Locale.ROOT));
    }

    /** Two values of metres, radians or plain number as “5 to 15°”. */
    public String range(ReadingKind kind, double low, double high) {
        Unit unit = kind.unit();
        int decimals = figures.limitDecimals(unit, low, high);
        return text(
                "figure.range",
                figures.number(figures.shown(unit, low), decimals),
                figures.number(figures.shown(unit, high), decimals),
                text(figures.unitKey(unit)));
    }

    /** One value of metres, radians or plain number, rounded like the limits of a range. */
    public String amount(ReadingKind kind, double inside) {
        Unit unit = kind.unit();
        return figures.number(figures.shown(unit, inside), figures.limitDecimals(unit, inside))
                + text(figures.unitKey(unit));
    }

    /** The half width of a 95 % interval with its unit, “± 1.3 cm”. */
    public String half(ReadingKind kind, double inside) {
        double half = figures.shown(kind.unit(), inside);
        return "± " + figures.number(half, Figures.decimals(half), RoundingMode.CEILING)
                + text(figures.unitKey(kind.unit()));
    }

    /** A length across a room: centimetres or inches up to a metre, metres or feet above. */
    public String far(double lengthM) {
        return figures.far(lengthM, this::text);
    }

    /** What the finding says, with its size and uncertainty. */
    public String sentence(Finding finding) {
        Reading reading = finding.reading();
        String state = state(finding);
        Optional<Verdict> verdict = finding.verdict();
        if (verdict.isEmpty()) {
            return text("finding.none", sentenceCase(state));
        }
        String recommended = finding.range().map(this::recommended).orElse("");
        return switch (verdict.get()) {
            case DRAFT, WITHHELD, NOT_FOR_CHILDREN ->
                text("finding." + verdict.get().id(), sentenceCase(state));
            case IN_RANGE -> text("finding.in-range", sentenceCase(state), recommended);
            case OUT_LOW, OUT_HIGH -> text("finding.out", fault(finding), state, recommended);
            case TOO_CLOSE -> text("finding.too-close", sentenceCase(state), recommended);
            case CANNOT_TELL ->
                text(
                        "finding.cannot-tell",
                        name(reading.kind()),
                        range(reading.kind(), reading.low(), reading.high()),
                        help(reading.dominatedBy()));
        };
    }

    /** The limits, and the height they were fitted to where they grow with the player. */
    public String recommended(Range range) {
        String limits = range(range.kind(), range.low(), range.high());
        return range.statureM().isPresent()
                ? text("range.fitted", limits, height(range.statureM().getAsDouble()))
                : limits;
    }

    /** The same in few words, for a gauge. */
    public String recommendedShort(Range range) {
        return text("handout.recommended", range(range.kind(), range.low(), range.high()));
    }

    /** Whose height the limits in centimetres were fitted to, for several gauges together. */
    public String fitted(Range range) {
        return text("handout.fitted", height(range.statureM().orElseThrow()));
    }

    private String height(double metres) {
        return lengthUnit == LengthUnit.INCH
                ? figures.number(LengthUnit.INCH.fromMetres(metres), 0) + text("unit.in")
                : figures.number(metres, 2) + text("unit.m");
    }

    private String state(Finding finding) {
        Reading reading = finding.reading();
        Unit unit = reading.kind().unit();
        String key = "state." + reading.kind().id();
        Written w = figures.written(unit, reading.value(), reading.low(), reading.high(), finding.range());
        if (!twoSided(reading.kind())) {
            return text(key + ".plus", written(unit, w, false));
        }
        double far = Math.max(-reading.low(), reading.high());
        if (reading.low() < 0 && reading.high() > 0 && agrees(finding, far)) {
            double shown = figures.shown(unit, far);
            int decimals = Figures.decimals(shown);
            return text(
                    key + ".zero", figures.number(shown, decimals, RoundingMode.CEILING) + text(figures.unitKey(unit)));
        }
        return text(key + (w.value() < 0 ? ".minus" : ".plus"), written(unit, w.unsigned(), false));
    }

    /** Whether “within so much of nought” is said to lie in the range, or outside, as the interval does. */
    private static boolean agrees(Finding finding, double far) {
        Reading r = finding.reading();
        if (finding.range().isEmpty()) {
            return true;
        }
        Range range = finding.range().get();
        Verdict said = Verdict.of(-far, far, range.low(), range.high());
        Verdict found = Verdict.of(r.low(), r.high(), range.low(), range.high());
        return said == found || !said.isDecided() && !found.isDecided();
    }

    private boolean twoSided(ReadingKind kind) {
        return wording.has("state." + kind.id() + ".minus");
    }

    /** What is wrong, without figures; only for a finding that is out of range. */
    public String fault(Finding finding) {
        return text("out." + finding.kind().id() + "." + outOf(finding).id());
    }

    private static Verdict outOf(Finding finding) {
        return finding.verdict()
                .filter(Verdict::isOut)
                .orElseThrow(() -> new IllegalStateException(
                        finding.kind().id() + " is not out of range; only what is out has a fault and an instruction"));
    }

    /** What to do about the first thing, in the player's words. */
    public String instruction(FirstThing first) {
        Finding finding = first.finding();
        String key = "do." + finding.kind().id() + "." + outOf(finding).id();
        return text(aimsElsewhere(finding) ? key + ".elsewhere" : key, size(finding), place(finding));
    }

    /** Shorter clubs have the ball farther back than under the shoulder or just inside the heel. */
    private static boolean aimsElsewhere(Finding finding) {
        double aim = finding.range().map(Range::aim).orElse(0.0);
        return switch (finding.kind()) {
            case BALL_TO_LEAD_SHOULDER -> Math.abs(aim) > 0.02;
            case BALL_TO_LEAD_HEEL -> aim < -0.07;
            default -> false;
        };
    }

    /** Where in the stance the aim is; only for the ball's place in the stance. */
    private String place(Finding finding) {
        double aim = finding.range().orElseThrow().aim();
        return finding.kind() != ReadingKind.BALL_IN_STANCE
                ? ""
                : text("place." + (aim < 0.52 ? "middle" : aim < 0.67 ? "ahead" : aim < 0.84 ? "halfway" : "heel"));
    }

    /** How far from the aim: in ball's widths where it is a length up to six of them. */
    private String size(Finding finding) {
        ReadingKind kind = finding.kind();
        Range range = finding.range().orElseThrow();
        double off = Math.abs(finding.reading().value() - range.aim());
        if (kind.unit() == Unit.CENTIMETRE) {
            long halves = Math.round(off / GolfBall.LEAST_DIAMETER_M * 2);
            if (halves > 4) {
                halves = 2 * Math.round(off / GolfBall.LEAST_DIAMETER_M);
            }
            if (halves <= MOST_HALVES) {
                return text("size.halves." + halves);
            }
        }
        return text(
                "size.figure",
                figures.number(figures.shown(kind.unit(), off), figures.limitDecimals(kind.unit())),
                text(figures.unitKey(kind.unit())));
    }

    /** What may follow from the first thing; empty when nothing else is out of range downstream of it. */
    public Optional<String> mayFollow(FirstThing first) {
        List<String> names = new ArrayList<>();
        for (ReadingKind kind : first.mayFollow()) {
            String name = name(kind);
            names.add(names.isEmpty() ? name : inSentence(name));
        }
        if (names.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(text(names.size() == 1 ? "mayfollow.one" : "mayfollow.many", list(names)));
    }

    /** What to say when no finding is out of range: that all is well only where every judged finding is in range. */
    public String nothing(Advice advice) {
        if (advice.isDraft()) {
            return text("nothing.draft");
        }
        if (!advice.isJudged()) {
            return text("nothing.unmeasured");
        }
        return text(advice.allInRange() ? "nothing" : "nothing.unsure");
    }

    /** Things in a row, the last one joined by the language's “and”. */
    public String list(List<String> items) {
        String text = items.isEmpty() ? "" : items.get(0);
        for (int i = 1; i < items.size(); i++) {
            text = text(i == items.size() - 1 ? "list.two" : "list.more", text, items.get(i));
        }
        return text;
    }

    /** What contradicts what, with the likeliest slip. */
    public String contradiction(Contradiction c) {
        return text("contradiction", clash(c), slip(c));
    }

    /** What contradicts what. */
    public String clash(Contradiction c) {
        return text("clash." + c.clash().id(), c.view().map(this::name).orElse(""));
    }

    /** The likeliest slip. */
    public String slip(Contradiction c) {
        return text("slip." + c.likely().id(), where(c), hand(c));
    }

    /** What undoes it. */
    public String mend(Contradiction c) {
        return text("mend." + c.likely().id(), where(c), hand(c));
    }

    private String where(Contradiction c) {
        return c.mend().flatMap(Mend::view).map(v -> text("slip.in", name(v))).orElse("");
    }

    private String hand(Contradiction c) {
        return c.mend()
                .map(m -> text("slip.hand." + m.sheet().handedness().id()))
                .orElse("");
    }

    /** A mark that does not fit the rest. */
    public String doubt(Doubt doubt) {
        String name = Landmark.of(doubt.mark())
                .map(this::name)
                .map(n -> text("doubt.landmark", n))
                .orElseGet(() -> doubt.mark().equals("ball") ? text("doubt.ball") : text("doubt.floor", doubt.mark()));
        return text(
                doubt.moves() ? "doubt" : "doubt.unusual",
                sentenceCase(name),
                figures.number(doubt.offPx(), 0),
                name(doubt.view()));
    }

    /** What would help most against an uncertainty that comes from there. */
    public String help(Source source) {
        return text("help." + source.id());
    }

    /** Why pictures could not tell, when the uncertainty comes from there, as a player is told. */
    public String unsure(Source source) {
        return text("unsure." + source.id());
    }

    /** Why this reading matters. */
    public String why(ReadingKind kind) {
        return text("why." + kind.id());
    }

    /** Why an effect may follow from its cause. */
    public String step(CauseChain.Link link) {
        return text("step." + link.cause().id() + "." + link.effect().id());
    }

    /** What a step of the chain stands on, with its citation where it has one. */
    public String grounds(CauseChain.Link link) {
        return text("grounds." + link.grounds().name().toLowerCase(Locale.ROOT).replace('_', '-'), link.source());
    }

    /** How the player can look for it alone. */
    public String check(ReadingKind kind) {
        return text("check."
                + switch (kind) {
                    case BALL_ABOVE_CROWN, TEE_HEIGHT -> "tee";
                    case BALL_TO_LEAD_SHOULDER, BALL_IN_STANCE, BALL_TO_LEAD_HEEL, HEAD_TO_BALL -> "ball";
                    case FEET_TO_TARGET -> "feet";
                    case SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET -> "shoulders";
                    case SHOULDER_TILT, TRAIL_HAND_LOWER -> "tilt";
                    case STANCE_WIDTH, STANCE_TO_SHOULDER_WIDTH, LEAD_FOOT_OUTSIDE_SHOULDER -> "stance";
                    default -> "posture";
                });
    }

    /** The same with a capital at its beginning. */
    public static String sentenceCase(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
