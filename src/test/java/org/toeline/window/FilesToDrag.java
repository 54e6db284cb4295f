package org.toeline.window;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.TransferMode;
import javafx.stage.Stage;
import javafx.stage.StageStyle;

/** Stands in for the folder that a person drags files from: a small window whose every drag drags the files. */
public final class FilesToDrag {

    private FilesToDrag() {}

    /** @param args where its corner is, x and y, and the files */
    public static void main(String[] args) {
        List<File> files =
                Arrays.stream(args).skip(2).map(f -> Path.of(f).toFile()).toList();
        Platform.startup(() -> {
            Label label = new Label("files");
            label.setMinSize(70, 40);
            label.setOnDragDetected(e -> {
                ClipboardContent content = new ClipboardContent();
                content.putFiles(files);
                label.startDragAndDrop(TransferMode.COPY).setContent(content);
                e.consume();
            });
            label.setOnDragDone(e -> System.exit(0));
            Stage stage = new Stage(StageStyle.UNDECORATED);
            stage.setTitle("files to drag");
            stage.setAlwaysOnTop(true);
            stage.setScene(new Scene(label));
            stage.setX(Double.parseDouble(args[0]));
            stage.setY(Double.parseDouble(args[1]));
            stage.show();
        });
    }
}
