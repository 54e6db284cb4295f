package org.toeline.desk;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.stage.Stage;
import org.toeline.across.Comparison;
import org.toeline.across.StatedFindings;
import org.toeline.desk.records.Settings;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.StatedFinding;

/**
 * Measures the screen across lessons: two players of sixty lessons each are chosen in turn, from the choice to the pulse that
 * has their rows painted. Screen: whatever JavaFX finds, or the headless one the tests use.
 */
public final class AcrossScenario {

    private static final int WARM = 20;
    private static final int COUNT = 60;

    private final CountDownLatch finished = new CountDownLatch(1);
    private final double[] millis = new double[WARM + COUNT];
    private Scene scene;
    private int done = -1;
    private long begun;
    private Optional<Comparison.Row> before = Optional.empty();
    private boolean there;
    private LongSupplier processor = () -> 0;
    private long usedBefore;

    private AcrossScenario() {}

    public static void main(String[] args) throws Exception {
        AcrossScenario scenario = new AcrossScenario();
        Path folder = Files.createTempDirectory("across");
        Path document = Path.of("sample-media/before/before.lesson.json");
        Lesson like = LessonDocument.read(document);
        List<StatedFinding> stated = StatedFindings.of(like);
        Platform.startup(() -> scenario.open(folder, like, stated));
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        scenario.processor = system::getProcessCpuTime;
        if (!scenario.finished.await(180, TimeUnit.SECONDS)) {
            System.out.println("not finished after three minutes; " + scenario.done + " choices");
        }
        double[] measured = Arrays.copyOfRange(scenario.millis, WARM, WARM + COUNT);
        Arrays.sort(measured);
        System.out.printf(
                Locale.ROOT,
                "%d choices: median %.1f ms, 90 %% %.1f ms, longest %.1f ms; processor time %.0f ms "
                        + "each, pictures and all%n",
                COUNT,
                measured[COUNT / 2],
                measured[COUNT * 9 / 10],
                measured[COUNT - 1],
                (system.getProcessCpuTime() - scenario.usedBefore) / 1e6 / COUNT);
        System.exit(0);
    }

    private void open(Path folder, Lesson like, List<StatedFinding> stated) {
        Screens screens = new Screens(folder, Settings.usual(folder.resolve("ledger")));
        Stage stage = new Stage();
        scene = new Scene(screens.root(), 1540, 940);
        stage.setScene(scene);
        stage.show();
        screens.records()
                .ask(
                        l -> {
                            SixtyLessons.of("A. Trial", like, stated, l);
                            return SixtyLessons.of("B. Trial", like, stated, l);
                        },
                        filled -> screens.go("across"));
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulse();
            }
        }.start();
    }

    /** Once a pulse: what came before the last one is painted by now. */
    @SuppressWarnings("unchecked")
    private void pulse() {
        ListView<Comparison.Row> rows = (ListView<Comparison.Row>) scene.lookup("#across-rows");
        if (rows == null || rows.getItems().isEmpty() || done == millis.length) {
            return;
        }
        Optional<Comparison.Row> first = Optional.of(rows.getItems().get(0));
        if (done < 0) {
            done = 0;
            choose(first);
        } else if (there) {
            millis[done++] = (System.nanoTime() - begun) / 1e6;
            if (done == WARM) {
                usedBefore = processor.getAsLong();
            }
            if (done == millis.length) {
                finished.countDown();
            } else {
                choose(first);
            }
        } else {
            there = first.get() != before.orElseThrow();
        }
    }

    @SuppressWarnings("unchecked")
    private void choose(Optional<Comparison.Row> shown) {
        there = false;
        before = shown;
        ComboBox<Player> players = (ComboBox<Player>) scene.lookup("#across-player");
        begun = System.nanoTime();
        players.getSelectionModel().select(1 - players.getSelectionModel().getSelectedIndex());
    }
}
