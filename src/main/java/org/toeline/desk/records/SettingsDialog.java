package org.toeline.desk.records;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonType;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.Window;
import org.toeline.desk.Texts;
import org.toeline.ledger.store.LedgerPlace;

/** Where the ledger is and what this bay is called. A change counts from the next start. */
public final class SettingsDialog {

    private final TextField folder = new TextField();
    private final TextField url = new TextField();
    private final TextField user = new TextField();
    private final PasswordField password = new PasswordField();
    private final TextField bay = new TextField();
    private final CheckBox copy = new CheckBox(Texts.of("settings.copy"));
    private final Label wrong = new Label();
    private final Settings before;

    private SettingsDialog(Settings before) {
        this.before = before;
        folder.setText(before.folder().folder().toString());
        before.server().ifPresent(s -> {
            url.setText(s.url());
            user.setText(s.user());
            password.setText(s.password());
        });
        bay.setText(before.bay());
        copy.setSelected(before.clips() == Settings.Clips.COPY);
        folder.setId("settings-folder");
        folder.setPrefWidth(360);
        url.setId("settings-server");
        url.setPromptText("jdbc:postgresql://host:5432/toeline");
        user.setId("settings-user");
        password.setId("settings-password");
        bay.setId("settings-bay");
        copy.setId("settings-copy");
        wrong.setId("settings-wrong");
        wrong.setWrapText(true);
        wrong.setMaxWidth(520);
        wrong.getStyleClass().add("doubt");
    }

    /**
     * Asks and writes.
     *
     * @return a sentence for the person; empty when nothing was changed
     */
    public static Optional<String> ask(SettingsFile file, Settings before, Window window) {
        SettingsDialog fields = new SettingsDialog(before);
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(window);
        dialog.setTitle(Texts.of("settings.title"));
        dialog.getDialogPane().getButtonTypes().addAll(ButtonType.OK, ButtonType.CANCEL);
        dialog.getDialogPane().setContent(fields.grid());
        dialog.getDialogPane().lookupButton(ButtonType.OK).addEventFilter(javafx.event.ActionEvent.ACTION, e -> {
            try {
                fields.settings();
            } catch (IllegalArgumentException x) {
                fields.wrong.setText(x.getMessage());
                e.consume();
            }
        });
        Optional<Settings> changed = dialog.showAndWait().filter(b -> b == ButtonType.OK).map(b -> fields.settings())
                .filter(s -> !s.equals(before));
        return changed.map(s -> written(file, s));
    }

    private static String written(SettingsFile file, Settings changed) {
        try {
            file.write(changed);
            return Texts.of("settings.kept");
        } catch (IOException e) {
            return Texts.of("settings.not-kept", file.file(), String.valueOf(e.getMessage()));
        }
    }

    private GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(8);
        grid.setPadding(new Insets(16));
        Button choose = new Button(Texts.of("settings.choose"));
        choose.setOnAction(e -> Optional.ofNullable(new DirectoryChooser().showDialog(folder.getScene().getWindow()))
                .map(File::toString).ifPresent(folder::setText));
        row(grid, "settings.folder", new HBox(8, folder, choose));
        row(grid, "settings.bay", bay);
        row(grid, "settings.server", url);
        row(grid, "settings.user", user);
        row(grid, "settings.password", password);
        grid.add(copy, 1, grid.getRowCount());
        Label hint = new Label(Texts.of("settings.hint"));
        hint.setWrapText(true);
        hint.setMaxWidth(520);
        hint.getStyleClass().add("hint");
        grid.add(hint, 0, grid.getRowCount(), 2, 1);
        grid.add(wrong, 0, grid.getRowCount(), 2, 1);
        return grid;
    }

    private static void row(GridPane grid, String key, javafx.scene.Node field) {
        Label label = new Label(Texts.of(key));
        label.setLabelFor(field);
        grid.addRow(grid.getRowCount(), label, field);
    }

    /** @throws IllegalArgumentException with a sentence for the person */
    private Settings settings() {
        Optional<LedgerPlace.Server> server = url.getText().isBlank() ? Optional.empty()
                : Optional.of(new LedgerPlace.Server(url.getText().strip(), user.getText().strip(), password.getText()));
        if (folder.getText().isBlank()) {
            throw new IllegalArgumentException(Texts.of("settings.no-folder"));
        }
        return before.withServer(server).withFolder(Path.of(folder.getText().strip())).withBay(bay.getText())
                .withClips(copy.isSelected() ? Settings.Clips.COPY : Settings.Clips.STAY);
    }
}
