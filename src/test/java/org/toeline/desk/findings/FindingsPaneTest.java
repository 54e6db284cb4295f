package org.toeline.desk.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.robot.Motion;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.advice.Assessment;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Slip;
import org.toeline.advice.Words;
import org.toeline.desk.ScreenPicture;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The findings of the sample lessons, and why the first is the first. */
@ExtendWith(ApplicationExtension.class)
class FindingsPaneTest {

    private final List<Slip> mended = new ArrayList<>();
    private FindingsPane pane;

    @Start
    void start(Stage stage) {
        pane = new FindingsPane(mended::add);
        stage.setScene(new Scene(pane, 420, 760));
        stage.show();
    }

    private static Assessment sample(String id) throws Exception {
        return Assessment.of(LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"))
                .sheet());
    }

    @Test
    void theChainIsShownWithWhatItRestsOn(FxRobot robot) throws Exception {
        Assessment before = sample("before");
        robot.interact(() -> {
            pane.words(Words.of(Locale.ENGLISH, LengthUnit.CENTIMETRE));
            pane.show(before);
        });
        robot.clickOn("#why-first");
        assertThat(robot.lookup("#chain").query().getAccessibleText())
                .contains("Kim et al. 2018")
                .contains("Ball and lead shoulder");
        ScreenPicture.keep(robot, robot.lookup("#chain").query().getScene(), "why-first");
        robot.clickOn("Close");
    }

    /** A sign says nothing to somebody who teaches: under the pointer the finding says which way and how far. */
    @Test
    void underThePointerAFindingIsASentence(FxRobot robot) throws Exception {
        Assessment before = sample("before");
        robot.interact(() -> {
            pane.words(Words.of(Locale.ENGLISH, LengthUnit.CENTIMETRE));
            pane.show(before);
        });
        robot.moveTo(robot.lookup("#gauges").query(), Pos.TOP_CENTER, new Point2D(0, 40), Motion.DEFAULT);
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, () -> !tip().isEmpty());
        assertThat(tip())
                .contains("nearer the target than the lead shoulder")
                .contains("±")
                .contains("Recommended");
    }

    private static String tip() {
        return Window.getWindows().stream()
                .filter(w -> w instanceof Tooltip && w.isShowing())
                .map(w -> ((Tooltip) w).getText())
                .findFirst()
                .orElse("");
    }

    @Test
    void whereMarksContradictNoFigureIsShownAndOneButtonTurnsTheSlipRound(FxRobot robot) throws Exception {
        MarkSheet sheet = LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"))
                .sheet();
        Assessment other = Assessment.of(sheet.withHandedness(Handedness.LEFT));
        robot.interact(() -> {
            pane.words(Words.of(Locale.ENGLISH, LengthUnit.CENTIMETRE));
            pane.show(other);
        });
        assertThat(robot.lookup("#gauges").query().getAccessibleText()).isEmpty();
        assertThat(robot.lookup("#why-first").query().isVisible()).isFalse();
        robot.clickOn("#mend");
        assertThat(mended).containsExactly(Slip.OTHER_HAND);
    }

    /** Advice on other marks than these is not left standing. */
    @Test
    void whileItIsReckonedNothingIsSaid(FxRobot robot) throws Exception {
        Assessment before = sample("before");
        robot.interact(() -> {
            pane.show(before);
            pane.reckoning();
        });
        assertThat(robot.lookup("#gauges").query().getAccessibleText()).isEmpty();
        assertThat(robot.lookup("#why-first").query().isVisible()).isFalse();
        assertThat(robot.lookup("#first-sentence").queryLabeled().getText()).isEqualTo(Texts.of("findings.reckoning"));
        robot.interact(() -> pane.show(before));
        assertThat(robot.lookup("#gauges").query().getAccessibleText()).contains("±");
    }

    @Test
    void whenNothingIsOutThereIsNothingToExplain(FxRobot robot) throws Exception {
        Assessment good = sample("all-good");
        robot.interact(() -> pane.show(good));
        assertThat(good.advice().first()).isEmpty();
        assertThat(robot.lookup("#why-first").query().isVisible()).isFalse();
    }

    /** Only gauges that look otherwise are painted anew: what stands there is what a pane painted afresh shows. */
    @Test
    void gaugesStandAsIfAllWerePaintedAnew(FxRobot robot) throws Exception {
        MarkSheet sheet = LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"))
                .sheet();
        ViewMarks face = sheet.view(View.FACE_ON).orElseThrow();
        Mark shoulder = face.mark(Landmark.LEAD_SHOULDER).orElseThrow();
        List<Assessment> steps = new ArrayList<>();
        for (double dx : new double[] {0, 0.05, 9, 9.05, -6}) {
            steps.add(Assessment.of(sheet.withView(face.withMark(
                    new Mark(shoulder.landmark(), shoulder.at().plus(dx, 0), shoulder.sigmaPx(), shoulder.origin())))));
        }
        steps.add(sample("after"));
        Words english = Words.of(Locale.ENGLISH, LengthUnit.CENTIMETRE);
        Words german = Words.of(Locale.GERMAN, LengthUnit.INCH);
        robot.interact(() -> pane.words(english));
        for (Assessment step : steps) {
            robot.interact(() -> pane.show(step));
            assertThat(unlike(robot, step, english)).as("pixels otherwise").isZero();
        }
        robot.interact(() -> {
            ((ScrollPane) pane.lookup(".scroll-pane")).setVvalue(0.7);
            pane.words(german);
            pane.show(steps.get(2));
        });
        assertThat(unlike(robot, steps.get(2), german))
                .as("pixels otherwise, scrolled and in other words")
                .isZero();
        robot.interact(() -> pane.getScene().getWindow().setWidth(520));
        assertThat(unlike(robot, steps.get(2), german))
                .as("pixels otherwise, in a wider window")
                .isZero();
    }

    /** How many pixels differ by more than a trace from those of gauges that are all painted anew. */
    private long unlike(FxRobot robot, Assessment step, Words words) {
        WaitForAsyncUtils.waitForFxEvents();
        AtomicReference<WritableImage> stood = new AtomicReference<>();
        AtomicReference<WritableImage> fresh = new AtomicReference<>();
        robot.interact(() -> {
            stood.set(pane.snapshot(null, null));
            // other words, or the same again, make all gauges be painted
            pane.words(words);
            pane.show(step);
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> fresh.set(pane.snapshot(null, null)));
        long unlike = 0;
        for (int y = 0; y < stood.get().getHeight(); y++) {
            for (int x = 0; x < stood.get().getWidth(); x++) {
                Color a = stood.get().getPixelReader().getColor(x, y);
                Color b = fresh.get().getPixelReader().getColor(x, y);
                unlike += Math.abs(a.getBrightness() - b.getBrightness()) > 0.3 ? 1 : 0;
            }
        }
        return unlike;
    }
}
