package org.toeline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
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
        stage.setOnHidden(e -> {
            close(stage, screens, closed);
            Platform.exit();
        });
        stage.show();
        Runtime.getRuntime()
                .addShutdownHook(new Thread(() -> whenEnded(stage, screens, closed), "keeps what is typed"));
        comeBack(stage);
        opened = screens::open;
        asked.ifPresentOrElse(opened, sheet::welcome);
    }

    /** Once: writes what waits and how the window was left. */
    private void close(Stage stage, Screens screens, CountDownLatch closed) {
        if (closed.getCount() > 0) {
            left.putDouble("width", stage.getWidth());
            left.putDouble("height", stage.getHeight());
            left.putDouble("x", stage.getX());
            left.putDouble("y", stage.getY());
            // a field keeps what is typed when it is left
            screens.root().requestFocus();
            screens.close();
            closed.countDown();
        }
    }

    /**
     * The system ends the program, when somebody logs out for instance: what waits is written, and has a little time for it. The
     * window is left alone: the toolkit, which is ended at the same time, may fail to hide it.
     */
    private void whenEnded(Stage stage, Screens screens, CountDownLatch closed) {
        if (closed.getCount() == 0) {
            return;
        }
        Platform.runLater(() -> close(stage, screens, closed));
        try {
            closed.await(MOST_WHEN_ENDED_S, TimeUnit.SECONDS);
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
