package org.toeline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.prefs.Preferences;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.toeline.desk.look.Look;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.place.FirstStart;
import org.toeline.ledger.store.place.LedgerPlace;

/** The desk's window. It comes back as it was left. */
public final class Desk extends Application {

    /** A system that shuts down waits no longer for a program. */
    private static final int MOST_WHEN_ENDED_S = 4;

    private static final long FROM_THE_TOOLKIT_MS = 300;

    private final Preferences left = Preferences.userNodeForPackage(Desk.class);

    private Optional<FirstStart> first = Optional.empty();
    /** What is done with a lesson's file, once the window is there. */
    private Consumer<Path> opened = file -> {};

    @Override
    public void start(Stage stage) throws IOException {
        Path folder = Path.of(System.getProperty("user.home"), "Toeline");
        Optional<Path> asked = getParameters().getUnnamed().stream().findFirst().map(Path::of);
        first = FirstStart.claim(
                folder,
                asked,
                file -> Platform.runLater(() -> {
                    raise(stage);
                    file.ifPresent(f -> opened.accept(f));
                }));
        if (first.isEmpty()) {
            // the desk that is open was asked to show itself, and the file
            Platform.exit();
            return;
        }
        show(stage, folder, asked);
    }

    private static void raise(Stage stage) {
        stage.setIconified(false);
        stage.toFront();
        stage.requestFocus();
    }

    @Override
    public void stop() throws IOException {
        if (first.isPresent()) {
            first.get().close();
        }
    }

    private void show(Stage stage, Path folder, Optional<Path> asked) {
        Screens screens = new Screens(folder, Settings.usual(LedgerPlace.usualFolder()));
        Sheet sheet = screens.sheet();
        CountDownLatch closed = new CountDownLatch(1);
        AtomicBoolean closing = new AtomicBoolean();
        double width = left.getDouble("width", 1540);
        double height = left.getDouble("height", 940);
        // of a size of its own, else the toolkit lays everything out as large as it likes to be first
        Scene scene = new Scene(screens.root(), width, height);
        Look.now().dress(scene);
        screens.keys(scene);
        stage.setTitle(Texts.of("title"));
        stage.getIcons().add(new Image(Desk.class.getResource("icon.png").toExternalForm()));
        stage.setScene(scene);
        stage.setWidth(width);
        stage.setHeight(height);
        Runnable close = () -> close(stage, screens, closing, closed);
        stage.setOnHidden(e -> {
            close.run();
            Platform.exit();
        });
        stage.show();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> whenEnded(close, closed), "keeps what is typed"));
        comeBack(stage);
        opened = screens::open;
        asked.ifPresentOrElse(opened, sheet::welcome);
    }

    /** Once: writes what waits and how the window was left. */
    private void close(Stage stage, Screens screens, AtomicBoolean closing, CountDownLatch closed) {
        if (!closing.compareAndSet(false, true)) {
            return;
        }
        try {
            left.putDouble("width", stage.getWidth());
            left.putDouble("height", stage.getHeight());
            left.putDouble("x", stage.getX());
            left.putDouble("y", stage.getY());
            if (Platform.isFxApplicationThread()) {
                // a field keeps what is typed when it is left
                screens.root().requestFocus();
            }
        } finally {
            screens.close();
            closed.countDown();
        }
    }

    /**
     * The system ends the program, when somebody logs out for instance: what waits is written, and has a little time for it. The
     * toolkit is ended at the same time; where its thread takes no work any more, nothing else touches the screens, and it is done
     * here.
     */
    private static void whenEnded(Runnable close, CountDownLatch closed) {
        try {
            Platform.runLater(close);
            if (!closed.await(FROM_THE_TOOLKIT_MS, TimeUnit.MILLISECONDS)) {
                close.run();
                closed.await(MOST_WHEN_ENDED_S, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Some window managers forget a size asked for before the window is there: it is asked for again. */
    private void comeBack(Stage stage) {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        double width = Math.min(screen.getWidth(), left.getDouble("width", 1540));
        double height = Math.min(screen.getHeight(), left.getDouble("height", 940));
        Platform.runLater(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
            double x = left.getDouble("x", (screen.getWidth() - width) / 2);
            double y = left.getDouble("y", (screen.getHeight() - height) / 2);
            stage.setX(Math.max(0, Math.min(x, screen.getWidth() - width)));
            stage.setY(Math.max(0, Math.min(y, screen.getHeight() - height)));
        });
    }
}
