package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.toeline.advice.Words;
import org.toeline.desk.text.Texts;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.Expectation;
import org.toeline.flight.compare.Expectations;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.TrailSide;
import org.toeline.language.Written;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.mark.Handedness;
import org.toeline.reading.ReadingKind;

/** What the change of the setup is expected to do to the shots, in words, beside what they did. */
record ExpectationWords(Words words) {

    /** Half the width of a 95 % interval, in standard uncertainties. */
    private static final double COVERAGE = 1.96;

    /** One sentence for each expectation whose reading changed, as far as both lessons have it. */
    List<String> of(PlayersShots.OfLesson before, PlayersShots.OfLesson after, SetupComparison comparison) {
        List<String> all = new ArrayList<>();
        for (Expectation e : Expectations.shipped().all()) {
            Optional<StatedFinding> first = before.finding(e.reading());
            Optional<StatedFinding> second = after.finding(e.reading());
            Optional<Difference> difference = comparison.differences().stream()
                    .filter(d -> d.figure() == e.figure())
                    .findFirst();
            if (first.isPresent()
                    && second.isPresent()
                    && difference.isPresent()
                    && e.applies(
                            after.club().id(), first.get().value(), second.get().value())) {
                all.add(sentence(e, first.get(), second.get(), difference.get(), trail(after.handedness())));
            }
        }
        return all;
    }

    private static TrailSide trail(Handedness handedness) {
        return handedness == Handedness.RIGHT ? TrailSide.RIGHT : TrailSide.LEFT;
    }

    private String sentence(
            Expectation e, StatedFinding before, StatedFinding after, Difference difference, TrailSide trail) {
        double change = after.value() - before.value();
        String reading = name(e.reading());
        String figure = Texts.of("shots.figure." + e.figure().id());
        String provenance = Texts.of("shots.provenance." + e.provenance()) + ", "
                + Texts.of("shots.strength." + e.strength().name().toLowerCase(Locale.ROOT));
        if (Math.abs(change) <= COVERAGE * Math.hypot(before.u(), after.u())) {
            return "○ " + Texts.of("shots.expected.no-change", reading, figure, provenance);
        }
        String amount = Written.number("%+.1f", change) + " " + before.unit();
        String way = Texts.of("shots.goes." + (change > 0 ? e.goes() : opposite(e.goes())).id());
        Expectation.Outcome outcome = e.outcome(change, difference, trail);
        return mark(outcome) + " "
                + Texts.of(
                        "shots.expected.sentence",
                        reading,
                        amount,
                        figure,
                        way,
                        Texts.of("shots.outcome." + outcome.name().toLowerCase(Locale.ROOT)),
                        provenance);
    }

    private static String mark(Expectation.Outcome outcome) {
        return switch (outcome) {
            case AS_EXPECTED -> "●";
            case AGAINST_IT -> "◆";
            case NEITHER, CANNOT_TELL -> "○";
        };
    }

    private static Expectation.Goes opposite(Expectation.Goes goes) {
        return switch (goes) {
            case UP -> Expectation.Goes.DOWN;
            case DOWN -> Expectation.Goes.UP;
            case TO_TRAIL_SIDE -> Expectation.Goes.TO_LEAD_SIDE;
            case TO_LEAD_SIDE -> Expectation.Goes.TO_TRAIL_SIDE;
        };
    }

    String name(String reading) {
        return ReadingKind.of(reading).map(words::name).orElse(reading);
    }
}
