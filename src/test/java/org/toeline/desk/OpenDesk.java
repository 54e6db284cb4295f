package org.toeline.desk;

import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.desk.shots.ShotsScreen;

/** The real desk in a window of its own, for scenarios that measure one of its screens. */
public final class OpenDesk {

    private final Screens screens;

    /** @param folder an empty one, for its ledger and documents */
    public OpenDesk(Path folder) {
        screens = new Screens(folder, Settings.usual(folder.resolve("ledger")));
        Stage stage = new Stage();
        Scene scene = new Scene(screens.root(), 1540, 940);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        screens.keys(scene);
        stage.setScene(scene);
        stage.show();
    }

    public Sheet sheet() {
        return screens.sheet();
    }

    public void sample() {
        screens.sheet().desk().sample();
    }

    public ShotsScreen shots() {
        screens.go("shots");
        return (ShotsScreen) screens.screen("shots");
    }
}
