package org.toeline.advice;

import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.toeline.language.Language;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Source;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Unit;

/**
 * Names, figures and phrases in plain words, from the resource bundle {@code words}; sentences made of them are {@link
 * FindingWords}', {@link ContradictionWords}' and {@link CauseWords}'. Immutable; any thread.
 */
public final class Words {

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

    /** Words in the person's language where the program speaks it, centimetres. */
    public static Words usual() {
        return of(Language.written(), LengthUnit.CENTIMETRE);
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

    Figures figures() {
        return figures;
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

    /** Whether there is such a phrase. */
    public boolean has(String key) {
        return wording.has(key);
    }

    /** Any phrase, with each name in braces filled in. */
    public String filled(String key, UnaryOperator<String> filling) {
        return wording.filled(key, filling);
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

    /**
     * The figure with its sign and the half width of its 95 % interval, such as “+12.1 ± 1.3 cm”, written so that it agrees with the
     * verdict.
     */
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

    /** As “+12.1 ± 1.3 cm”. */
    String written(Unit unit, Written w, boolean withPlus) {
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

    /** Whether a reading goes to two sides of nought. */
    boolean twoSided(ReadingKind kind) {
        return wording.has("state." + kind.id() + ".minus");
    }

    /** Things in a row, the last one joined by the language's “and”. */
    public String list(List<String> items) {
        String text = items.isEmpty() ? "" : items.get(0);
        for (int i = 1; i < items.size(); i++) {
            text = text(i == items.size() - 1 ? "list.two" : "list.more", text, items.get(i));
        }
        return text;
    }

    /** What would help most against an uncertainty that comes from there. */
    public String help(Source source) {
        return text("help." + source.id());
    }

    /** Why pictures could not tell, when the uncertainty comes from there, as a player is told. */
    public String unsure(Source source) {
        return text("unsure." + source.id());
    }

    /** The same with a capital at its beginning. */
    public static String sentenceCase(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
