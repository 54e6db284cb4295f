package org.toeline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.toeline.advice.Assessment;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/**
 * A command, not a test: drags the lead shoulder of the sample lesson 500 times on the real desk, and measures from the
 * drag to the pulse in which the findings that follow from it have been drawn. One drag a time: the next begins when
 * the last is on screen. Screen: whatever JavaFX finds, or the headless one the tests use.
 */
public final class DragScenario {

    private static final int WARM = 200;
    private static final int COUNT = 500;

    private Sheet sheet;
    private Stage stage;
    private final double[] millis = new double[WARM + COUNT];
    private int done = -1;
    private long begun;
    private Optional<Assessment> before = Optional.empty();
    private ImagePoint home;
    private final CountDownLatch finished = new CountDownLatch(1);

    private DragScenario() {}

    public static void main(String[] args) throws Exception {
        DragScenario scenario = new DragScenario();
        Platform.startup(scenario::open);
        if (!scenario.finished.await(180, TimeUnit.SECONDS)) {
            System.out.println("not finished after three minutes; " + scenario.done + " drags");
        }
        double[] measured = Arrays.copyOfRange(scenario.millis, WARM, WARM + COUNT);
        Arrays.sort(measured);
        System.out.printf(
                Locale.ROOT,
                "%d drags: median %.1f ms, 90 %% %.1f ms, 99 %% %.1f ms, longest %.1f ms%n",
                COUNT,
                measured[COUNT / 2],
                measured[COUNT * 9 / 10],
                measured[COUNT * 99 / 100],
                measured[COUNT - 1]);
        System.exit(0);
    }

    private static Path temporary() {
        try {
            return Files.createTempDirectory("drag");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void open() {
        Path folder = temporary();
        Screens screens = new Screens(folder, Settings.usual(folder.resolve("ledger")));
        sheet = screens.sheet();
        stage = new Stage();
        stage.setScene(new Scene(screens.root(), 1540, 940));
        stage.show();
        sheet.desk().sample();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulse();
            }
        }.start();
    }

    /** Once a pulse: what was asked for before the last one is drawn by now. */
    private void pulse() {
        if (done < 0) {
            if (sheet.assessment().isPresent()
                    && sheet.clips().frame(View.FACE_ON).isPresent()) {
                sheet.model().select(new Item.OfLandmark(Landmark.LEAD_SHOULDER));
                home = sheet.model()
                        .marks(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.LEAD_SHOULDER)
                        .orElseThrow()
                        .at();
                sheet.model().grab();
                done = 0;
                drag();
            }
            return;
        }
        if (done < millis.length && sheet.assessment().orElse(null) != before.orElse(null)) {
            millis[done] = (System.nanoTime() - begun) / 1e6;
            done++;
            if (done == millis.length) {
                finished.countDown();
            } else {
                drag();
            }
        }
    }

    private void drag() {
        before = sheet.assessment();
        double angle = done * 0.3;
        begun = System.nanoTime();
        sheet.model().drag(home.plus(6 * Math.cos(angle), 6 * Math.sin(angle)));
    }
}
