package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Finding;
import org.toeline.advice.Gate;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Mend;
import org.toeline.advice.Slip;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The sample lesson spoilt in the usual ways: nothing is judged, and the slip is named and can be undone. */
class ContradictionTest {

    private static MarkSheet sample(String id) throws Exception {
        return LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"))
                .sheet();
    }

    private static MarkSheet spoilt(Nonsense nonsense) throws Exception {
        return nonsense.of(sample("before"), sample("all-good"), new SplittableRandom(1));
    }

    /** Another player's clip may fit as well as his own where both stand alike; how often, {@link ContradictionStudy} says. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ANOTHER_CLIP")
    void nothingIsJudged(Nonsense nonsense) throws Exception {
        Advice advice = Assessment.of(spoilt(nonsense)).advice();
        assertThat(advice.withheld()).isPresent();
        assertThat(advice.first()).isEmpty();
        assertThat(advice.isJudged()).isFalse();
        assertThat(advice.allInRange()).isFalse();
        assertThat(advice.findings())
                .isNotEmpty()
                .allMatch(f -> f.verdict().orElseThrow() == Verdict.WITHHELD)
                .allMatch(f -> f.range().isEmpty());
        assertThat(advice.withheld().get().likely().id())
                .isEqualTo(nonsense.likely.isEmpty() ? "unknown" : nonsense.likely);
        for (Words words : List.of(Words.english(), Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE))) {
            assertThat(new ContradictionWords(words).sentence(advice.withheld().get()))
                    .doesNotContain("{")
                    .hasSizeGreaterThan(40);
            assertThat(new ContradictionWords(words).mend(advice.withheld().get()))
                    .doesNotContain("{")
                    .hasSizeGreaterThan(8);
        }
    }

    @ParameterizedTest
    @EnumSource(
            names = {"ROD_TURNED", "CROSS_ROD_TURNED_IN_ONE_VIEW", "TARGET_REVERSED", "OTHER_HAND", "VIEWS_EXCHANGED"})
    void whatWasTurnedRoundCanBeTurnedBack(Nonsense nonsense) throws Exception {
        MarkSheet mended = Gate.best(spoilt(nonsense), Slip.of(nonsense.likely).orElseThrow())
                .map(Mend::sheet)
                .orElseThrow();
        assertThat(mended).isEqualTo(sample("before"));
    }

    /** A rod of which a view shows one end alone, called by its other end's name: one mark, which the slip explains wholly. */
    @ParameterizedTest
    @EnumSource(
            value = View.class,
            names = {"FACE_ON", "DOWN_THE_LINE"})
    void oneEndByTheOtherEndsNameIsARodTurned(View view) throws Exception {
        MarkSheet sheet = sample("before");
        ViewMarks marks = sheet.view(view).orElseThrow();
        FloorMark near = marks.floorMark("rod-near").orElseThrow();
        ViewMarks alone = marks.withoutFloorMark("rod-near").withoutFloorMark("rod-far");
        assertThat(Assessment.of(sheet.withView(alone.withFloorMark(near)))
                        .advice()
                        .withheld())
                .as("by its own name")
                .isEmpty();
        Advice advice = Assessment.of(
                        sheet.withView(alone.withFloorMark(new FloorMark("rod-far", near.at(), near.sigmaPx()))))
                .advice();
        assertThat(advice.withheld().map(c -> c.likely())).contains(Slip.ROD_TURNED);
    }

    /** A rod's end clicked in a wrong place is one wrong mark: named, and no slip. */
    @Test
    void anEndClickedAmissIsOneWrongMark() throws Exception {
        MarkSheet sheet = sample("before");
        ViewMarks marks = sheet.view(View.DOWN_THE_LINE).orElseThrow();
        FloorMark near = marks.floorMark("rod-near").orElseThrow();
        for (double off : new double[] {-90, 70, 140}) {
            Assessment amiss = Assessment.of(sheet.withView(
                    marks.withFloorMark(new FloorMark("rod-near", near.at().plus(off, off / 3), near.sigmaPx()))));
            assertThat(amiss.posture().doubts()).as("%.0f px", off).isNotEmpty();
            assertThat(amiss.advice().withheld()).as("%.0f px", off).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "all-good", "left-handed"})
    void samplesAreJudged(String id) throws Exception {
        Advice advice = Assessment.of(sample(id)).advice();
        assertThat(advice.withheld()).isEmpty();
        assertThat(advice.isJudged()).isTrue();
    }

    /** While a lesson is being marked, in whatever order, nothing is said to contradict anything. */
    @Test
    void halfMarkedSheetsContradictNothing() throws Exception {
        MarkSheet whole = sample("before");
        SplittableRandom random = new SplittableRandom(20);
        for (int i = 0; i < 12; i++) {
            MarkSheet some = whole;
            double share = random.nextDouble();
            for (ViewMarks v : whole.views()) {
                ViewMarks fewer = v.withoutMarks();
                for (Mark m : v.marks()) {
                    fewer = random.nextDouble() < share ? fewer.withMark(m) : fewer;
                }
                some = some.withView(fewer);
            }
            assertThat(Assessment.of(some).advice().withheld()).as("sheet " + i).isEmpty();
        }
    }

    /** Suggestions may be seen, and judge nothing. */
    @Test
    void suggestionsAloneGiveDrafts() throws Exception {
        MarkSheet sheet = sample("before");
        for (ViewMarks marked : sheet.views()) {
            ViewMarks v = marked;
            for (Mark m : marked.marks()) {
                v = v.withMark(new Mark(m.landmark(), m.at(), m.sigmaPx(), Mark.Origin.SUGGESTED));
            }
            sheet = sheet.withView(v);
        }
        Advice advice = Assessment.of(sheet).advice();
        assertThat(advice.first()).isEmpty();
        Stream<Finding> body =
                advice.findings().stream().filter(f -> !f.kind().landmarks().isEmpty());
        assertThat(body).isNotEmpty().allMatch(Finding::isDraft);
        assertThat(advice.allInRange()).isFalse();
    }

    /** An upright, a rod beside another and a knee that wait to be looked at take no verdict from what they are no part of. */
    @Test
    void whatWasMarkedByHandIsJudgedWhateverIsSuggestedMeanwhile() throws Exception {
        MarkSheet sheet = sample("before");
        for (ViewMarks marked : sheet.views()) {
            ViewMarks v = marked;
            v = v.withVerticals(v.verticals().stream()
                    .map(u -> new VerticalMark(u.from(), u.to(), u.sigmaPx(), Mark.Origin.SUGGESTED))
                    .toList());
            for (FloorMark f : v.floorMarks().stream().skip(2).toList()) {
                v = v.withFloorMark(new FloorMark(f.pointId(), f.at(), f.sigmaPx(), Mark.Origin.SUGGESTED));
            }
            Optional<Mark> knee = v.mark(Landmark.LEAD_KNEE);
            sheet = sheet.withView(knee.isEmpty() ? v : v.withMark(suggested(knee.get(), 0)));
        }
        assertThat(sheet.isAccepted()).isFalse();
        Advice byHand = Assessment.of(sheet.onlyAccepted()).advice();
        Advice meanwhile = Assessment.of(sheet).advice();
        assertThat(byHand.first()).isPresent();
        assertThat(meanwhile.first()).isEqualTo(byHand.first());
        assertThat(meanwhile.findings()).noneMatch(Finding::isDraft).isEqualTo(byHand.findings());
    }

    /** A camera that only suggested rods tell of, and a ball that nobody has looked at, earn no verdict. */
    @Test
    void rodsAndBallThatNobodyAcceptedGiveDrafts() throws Exception {
        MarkSheet sample = sample("before");
        MarkSheet sheet = sample;
        for (ViewMarks marked : sample.views()) {
            ViewMarks v = marked;
            for (FloorMark f : marked.floorMarks()) {
                v = v.withFloorMark(new FloorMark(f.pointId(), f.at(), f.sigmaPx(), Mark.Origin.SUGGESTED));
            }
            sheet = sheet.withView(v);
        }
        assertThat(Assessment.of(sheet).advice().findings()).isNotEmpty().allMatch(Finding::isDraft);
        ViewMarks faceOn = sample.view(View.FACE_ON).orElseThrow();
        BallMark b = faceOn.ball().orElseThrow();
        BallMark seen =
                new BallMark(b.centre(), b.diameterPx(), b.sigmaPx(), b.diameterSigmaPx(), Mark.Origin.SUGGESTED);
        List<Finding> findings = Assessment.of(sample.withView(faceOn.withBall(Optional.of(seen))))
                .advice()
                .findings();
        assertThat(findings).allMatch(f -> f.isDraft() == f.kind().needsBall());
    }

    /** What one view suggests is held against the other before anybody has accepted either. */
    @Test
    void aSuggestionThatTheOtherViewContradictsIsDoubted() throws Exception {
        MarkSheet sheet = sample("before");
        for (ViewMarks marked : sheet.views()) {
            ViewMarks v = marked;
            for (Mark m : marked.marks()) {
                v = v.withMark(suggested(m, 0));
            }
            sheet = sheet.withView(v);
        }
        assertThat(Assessment.of(sheet).posture().doubts()).isEmpty();
        ViewMarks side = sheet.view(View.DOWN_THE_LINE).orElseThrow();
        for (Landmark landmark : List.of(Landmark.TRAIL_WRIST, Landmark.TRAIL_HIP, Landmark.TRAIL_ANKLE)) {
            Mark wrong = suggested(side.mark(landmark).orElseThrow(), -80);
            assertThat(Assessment.of(sheet.withView(side.withMark(wrong)))
                            .posture()
                            .doubts())
                    .as(landmark.id())
                    .anyMatch(d -> d.view() == View.DOWN_THE_LINE && d.mark().equals(landmark.id()) && d.odds() > 0.5);
        }
    }

    /** As the program suggests it: known to some nine pixels. */
    private static Mark suggested(Mark mark, double downPx) {
        return new Mark(mark.landmark(), mark.at().plus(0, downPx), 9, Mark.Origin.SUGGESTED);
    }
}
