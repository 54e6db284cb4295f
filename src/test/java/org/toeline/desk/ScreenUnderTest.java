package org.toeline.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;

/** One screen in a window of its own, over a real ledger in a folder that goes with the test. */
@ExtendWith(ApplicationExtension.class)
public abstract class ScreenUnderTest {

    private static final int HEIGHT = 760;
    private static final int WIDTH = 1280;

    @TempDir
    protected Path folder;

    protected StudioForTests studio;
    private final List<String> said = new CopyOnWriteArrayList<>();
    private Scene scene;

    /** To be called by the test's own {@code @Start}: an inherited one is not looked for. */
    protected <S extends Screen> S show(Stage stage, Function<Studio, S> made) {
        studio = new StudioForTests(folder, said::add);
        S screen = made.apply(studio.studio());
        scene = new Scene(screen.root(), WIDTH, HEIGHT);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        stage.setScene(scene);
        // the window stays from test to test, and so would what an earlier one made of it
        stage.setWidth(WIDTH);
        stage.setHeight(HEIGHT);
        stage.show();
        return screen;
    }

    @AfterEach
    void close() {
        studio.close();
    }

    /** The sentences at the bottom of the window so far. */
    protected List<String> said() {
        return said;
    }

    protected static void until(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** To be looked at by people, see {@link ScreenPicture}. */
    protected void picture(FxRobot robot, String name) throws Exception {
        ScreenPicture.keep(robot, scene, name);
    }
}
