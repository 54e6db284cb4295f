package org.toeline.desk;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;

/** The real desk with an empty sheet, to be driven by mouse and key. */
@ExtendWith(ApplicationExtension.class)
public abstract class DrivenDesk {

    @TempDir
    protected static Path folder;

    Screens screens;
    protected Sheet sheet;
    protected PicturePane picture;

    /** To be called by the test's own {@code @Start}: an inherited one is not looked for. */
    protected void open(Stage stage) {
        screens = new Screens(folder, Settings.usual(folder.resolve("ledger")));
        sheet = screens.sheet();
        Scene scene = new Scene(screens.root(), 1540, 940);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        screens.keys(scene);
        stage.setScene(scene);
        // the window stays from test to test, and so would what an earlier one made of it
        stage.setWidth(1540);
        stage.setHeight(940);
        stage.setX(0);
        stage.setY(0);
        stage.show();
        picture = (PicturePane) scene.lookup("#picture");
    }

    /** Decoded frames would stay in memory from test to test. */
    @AfterEach
    void closeDesk() {
        Platform.runLater(screens::close);
        WaitForAsyncUtils.waitForFxEvents();
    }

    protected LessonModel model() {
        return sheet.model();
    }

    /** Whether what is marked now is judged: an empty lesson has an assessment too. */
    protected boolean isJudged() {
        return sheet.findings().filter(a -> a.advice().isJudged()).isPresent();
    }

    protected static void until(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
