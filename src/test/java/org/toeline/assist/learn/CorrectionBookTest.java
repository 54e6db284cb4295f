package org.toeline.assist.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.assist.LandmarkSuggester;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.assist.learn.Shown.Look;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/** Properties of what counts as a correction, of what a single one can do, and of the document. */
class CorrectionBookTest {

    private static final Landmark KNEE = Landmark.TRAIL_KNEE;
    private static final View VIEW = View.DOWN_THE_LINE;
    private static final double S = LandmarkSuggester.spread(KNEE, VIEW).orElseThrow();
    private static final double SPAN_PX = 500;
    private static final ImagePoint AT = new ImagePoint(700, 600);

    /** A mark so far towards the ball and up from where it was suggested, in stated spreads. */
    private static CorrectionBook marked(CorrectionBook book, double towards, double up, Look look) {
        Mark shown = new Mark(KNEE, AT, S * SPAN_PX, Mark.Origin.SUGGESTED);
        Mark mark = Mark.placed(KNEE, AT.plus(towards * S * SPAN_PX, -up * S * SPAN_PX), 2);
        return new Shown(VIEW, shown, shown, SPAN_PX, Handedness.RIGHT).onto(book, mark, look);
    }

    private static CorrectionBook some(int n, double towards, double up, double noise, long seed) {
        Random random = new Random(seed);
        CorrectionBook book = CorrectionBook.EMPTY;
        for (int i = 0; i < n; i++) {
            double t = towards + noise * random.nextGaussian();
            double u = up + noise * random.nextGaussian();
            book = marked(book, t, u, Look.OTHERWISE);
        }
        return book;
    }

    private static Corrections knee(CorrectionBook book) {
        return book.of(VIEW, KNEE).orElseThrow();
    }

    private static Learnt learnt(CorrectionBook book) {
        return knee(book).learnt().orElseThrow();
    }

    @Test
    void nothingIsLearntFromAFew() {
        assertThat(knee(some(7, 1, 1, 0.2, 1)).learnt()).isEmpty();
        assertThat(knee(some(8, 1, 1, 0.2, 1)).learnt()).isPresent();
    }

    /** By hand: eight equal ones leave v = 8s²/(8 + 14/3) = 12s²/19 and count like n = 8/3, so that w = n/(n + 24/19). */
    @Test
    void theFormulaByHand() {
        Learnt learnt = learnt(some(8, 1, 0, 0, 1));
        double w = 8.0 / 3 / (8.0 / 3 + 24.0 / 19);
        assertThat(learnt.towards()).isEqualTo(w * S, within(1e-6 * S));
        assertThat(learnt.up()).isEqualTo(0, within(1e-6 * S));
        assertThat(learnt.spread()).isEqualTo(S * Math.sqrt(12.0 / 19 * (1 + w / 8 * 3)), within(1e-6 * S));
    }

    @Test
    void neverNarrowerThanHalfUnlessThereAreManyNorThanAClick() {
        assertThat(learnt(some(39, 1, 0, 0, 1)).spread()).isGreaterThan(S / 2);
        assertThat(learnt(some(60, 1, 0, 0, 1)).spread()).isBetween(0.4 * S, S / 2);
        assertThat(Learnt.of(knee(some(100, 1, 0, 0, 1)).kept(), Learnt.CLICK)
                        .orElseThrow()
                        .spread())
                .isEqualTo(Learnt.CLICK);
    }

    /** As far away as still counts, among others that agree: the offset moves by three stated spreads over their number at most. */
    @ParameterizedTest
    @CsvSource({"9, 2.9", "9, -2.9", "20, 2.9", "60, -2.9"})
    void oneWildCorrectionMovesNothingMuch(int n, double wild) {
        CorrectionBook others = some(n, 0.3, -0.2, 0.5, 3);
        Learnt before = learnt(others);
        Learnt after = learnt(marked(others, wild, 0, Look.OTHERWISE));
        assertThat(Math.abs(after.towards() - before.towards())).isLessThan(1.8 * S / n);
        assertThat(Math.abs(after.up() - before.up())).isLessThan(0.5 * S / n);
        assertThat(after.spread() - before.spread()).isLessThan(5 * S / n);
    }

    @Test
    void theOtherLegIsAMissAndNoOffset() {
        CorrectionBook others = some(20, 0.3, -0.2, 0.5, 3);
        CorrectionBook book = marked(marked(others, 9, 1, Look.OTHERWISE), -2.2, 2.2, Look.ALONE);
        assertThat(knee(book).misses()).isEqualTo(2);
        assertThat(learnt(book)).isEqualTo(learnt(others));
    }

    /** Who agrees with most of what is suggested does not want it moved by the few that were off. */
    @Test
    void whatWasLookedAtAndAgreedWithCountsAgainstAnOffset() {
        CorrectionBook few = some(8, 1, 0, 0.2, 4);
        CorrectionBook book = few;
        for (int i = 0; i < 24; i++) {
            book = marked(book, 0, 0, Look.ALONE);
        }
        assertThat(knee(book).count(Kind.AGREED)).isEqualTo(24);
        assertThat(learnt(few).towards()).isGreaterThan(0.6 * S);
        assertThat(learnt(book).towards()).isBetween(0.1 * S, 0.3 * S);
        assertThat(learnt(book).spread()).as("nor does agreeing narrow it").isGreaterThan(0.9 * S);
    }

    @Test
    void whatWasAcceptedWithAllTheOthersTellsNothing() {
        CorrectionBook book = some(8, 1, 0, 0.2, 4);
        assertThat(marked(book, 0, 0, Look.OTHERWISE)).isEqualTo(book);
        assertThat(marked(book, 0.05, 0, Look.OTHERWISE))
                .as("averaged over frames")
                .isEqualTo(book);
    }

    @Test
    void onlyTheLastHundredCount() {
        CorrectionBook book = some(100, 1, 0, 0.1, 5);
        for (int i = 0; i < 100; i++) {
            book = marked(book, -1, 0, Look.OTHERWISE);
        }
        assertThat(knee(book).count(Kind.MOVED)).isEqualTo(100);
        assertThat(learnt(book).towards()).isLessThan(-0.95 * S);
    }

    @Test
    void isReadAsItWasWritten() throws Exception {
        CorrectionBook book = marked(marked(some(12, 1, 0, 0.2, 4), 0, 0, Look.ALONE), 9, 9, Look.OTHERWISE);
        CorrectionBook read = CorrectionBook.of(book.json());
        assertThat(CorrectionBook.of(read.json())).isEqualTo(read);
        assertThat(knee(read).misses()).isEqualTo(1);
        assertThat(knee(read).count(Kind.MOVED)).isEqualTo(12);
        assertThat(knee(read).count(Kind.AGREED)).isEqualTo(1);
        // a twenty-thousandth of the span is lost when it is written
        assertThat(learnt(read).towards()).isEqualTo(learnt(book).towards(), within(1e-4));
        assertThat(CorrectionBook.of(CorrectionBook.EMPTY.json())).isEqualTo(CorrectionBook.EMPTY);
    }

    /** Nothing but shares, counts, and the names of landmarks and views. */
    @Test
    void holdsNothingElse() {
        String text = new String(some(9, 1, 0, 0.2, 4).json(), StandardCharsets.UTF_8);
        assertThat(text.replace(LandmarkSuggester.edition(), "")
                        .replaceAll("[0-9.\\s\\[\\],:{}\"]|-(?=[0-9.])|(?<=[0-9])E", " ")
                        .strip()
                        .split(" +"))
                .containsOnly(
                        "format",
                        "toeline-corrections",
                        "version",
                        "of",
                        "landmarks",
                        "view",
                        "down-the-line",
                        "landmark",
                        "trail-knee",
                        "misses",
                        "moved",
                        "agreed");
    }

    private static String document(String landmark) {
        return "{\"format\":\"toeline-corrections\",\"version\":1,\"of\":\"" + LandmarkSuggester.edition()
                + "\",\"landmarks\":[" + landmark + "]}";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"view\":\"face-on\",\"landmark\":\"trail-knee\",\"misses\":-1}",
                "{\"view\":\"face-on\",\"landmark\":\"trail-knee\"}",
                "{\"view\":\"tee\",\"landmark\":\"crown\",\"misses\":0}",
                "{\"view\":\"face-on\",\"landmark\":\"club-head\",\"misses\":0}",
                "{\"view\":\"face-on\",\"landmark\":\"neck\",\"misses\":0,\"moved\":[[0.1]]}",
                "{\"view\":\"face-on\",\"landmark\":\"neck\",\"misses\":0,\"moved\":[[0.1,\"0.1\"]]}",
                "{\"view\":\"face-on\",\"landmark\":\"neck\",\"misses\":0,\"moved\":[[0.1,7]]}",
                "{\"view\":\"face-on\",\"landmark\":\"neck\",\"misses\":0},"
                        + "{\"view\":\"face-on\",\"landmark\":\"neck\",\"misses\":0}"
            })
    void whatIsNoDocumentIsRefusedWithAClause(String landmark) {
        assertThatThrownBy(() -> CorrectionBook.of(document(landmark).getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageNotContaining("Exception");
    }

    /** Offsets from what an earlier edition suggests would be put onto other places. */
    @Test
    void whatWasLearntFromAnotherEditionIsRefused() {
        String other = document("").replace(LandmarkSuggester.edition(), "0123456789ab");
        assertThatThrownBy(() -> CorrectionBook.of(other.getBytes(StandardCharsets.UTF_8)))
                .hasMessageContaining("another edition");
        assertThat(LandmarkSuggester.edition()).matches("[0-9a-f]{12}");
    }
}
