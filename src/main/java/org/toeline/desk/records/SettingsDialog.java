package org.toeline.desk.records;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import javafx.util.StringConverter;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.dialog.FieldRows;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.language.Language;
import org.toeline.ledger.store.place.LedgerPlace;

/** Where the ledger is and what this bay is called. A change counts from the next start. */
public final class SettingsDialog {

    private final TextField folder = new TextField();
    private final TextField url = new TextField();
    private final TextField user = new TextField();
    private final PasswordField password = new PasswordField();
    private final TextField bay = new TextField();
    private final ComboBox<Optional<Locale>> language = new ComboBox<>();
    private final ComboBox<Integer> text = new ComboBox<>();
    private final CheckBox dark = new CheckBox(Texts.of("settings.dark"));
    private final CheckBox copy = new CheckBox(Texts.of("settings.copy"));
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
        text.setId("settings-text");
        text.getItems().setAll(Look.SIZES);
        text.setConverter(chosen(percent -> Texts.of("settings.percent", percent)));
        text.setValue(before.look().textPercent());
        dark.setId("settings-dark");
        dark.setSelected(before.look().paper() == Look.Paper.DARK);
        language.setId("settings-language");
        language.setMaxWidth(Double.MAX_VALUE);
        language.getItems().add(Optional.empty());
        Language.all().forEach(l -> language.getItems().add(Optional.of(l)));
        language.setConverter(chosen(
                locale -> locale.map(l -> l.getDisplayLanguage(l)).orElse(Texts.of("settings.language.system"))));
        language.setValue(before.language());
    }

    private static <T> StringConverter<T> chosen(Function<T, String> name) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                return name.apply(value);
            }

            @Override
            public T fromString(String typed) {
                throw new UnsupportedOperationException("chosen, not typed");
            }
        };
    }

    /** @param say is told, once the settings were changed and written, how that went */
    public static void ask(SettingsFile file, Settings before, Window window, Consumer<String> say) {
        SettingsDialog fields = new SettingsDialog(before);
        new DialogFrame(window, Texts.of("settings.title"))
                .middle(fields.rows())
                .leave(Texts.of("dialog.cancel"))
                .act("settings-keep", Texts.of("dialog.keep"), () -> {
                    Settings changed = fields.settings();
                    if (!changed.equals(before)) {
                        say.accept(written(file, changed));
                    }
                })
                .asksBeforeLosing(fields::typed)
                .show();
    }

    private static String written(SettingsFile file, Settings changed) {
        try {
            file.write(changed);
            return Texts.of("settings.kept");
        } catch (IOException e) {
            return Texts.of("settings.not-kept", file.file(), String.valueOf(e.getMessage()));
        }
    }

    private List<Object> typed() {
        return List.of(
                folder.getText(),
                bay.getText(),
                url.getText(),
                user.getText(),
                password.getText(),
                copy.isSelected(),
                language.getValue(),
                text.getValue(),
                dark.isSelected());
    }

    private FieldRows rows() {
        Button choose = new Button(Texts.of("settings.choose"));
        choose.setMinWidth(Region.USE_PREF_SIZE);
        choose.setOnAction(e -> new FileDialog(FileDialog.Kind.LEDGER, "settings.folder")
                .from(folder.getText())
                .folder(folder.getScene().getWindow())
                .map(Path::toString)
                .ifPresent(folder::setText));
        HBox.setHgrow(folder, Priority.ALWAYS);
        Label hint = DialogFrame.wrapped(Texts.of("settings.hint"));
        hint.getStyleClass().add("hint");
        return new FieldRows()
                .row(
                        Texts.of("settings.folder"),
                        new HBox(8, folder, choose),
                        Fault.ofReading(folder, Texts.of("settings.no-folder"), () -> before.withFolder(folder())))
                .row(
                        Texts.of("settings.bay"),
                        bay,
                        Fault.ofReading(bay, Texts.of("settings.no-bay"), () -> before.withBay(bay.getText())))
                .row(
                        Texts.of("settings.server"),
                        url,
                        Fault.ofReading(url, Texts.of("settings.no-server"), this::server))
                .row(Texts.of("settings.user"), user)
                .row(Texts.of("settings.password"), password)
                .row(Texts.of("settings.language"), language)
                .row(Texts.of("settings.text"), text)
                .row("", dark)
                .row("", copy)
                .across(hint);
    }

    private Path folder() {
        if (folder.getText().isBlank()) {
            throw new IllegalArgumentException(Texts.of("settings.no-folder"));
        }
        return Path.of(folder.getText().strip());
    }

    private Optional<LedgerPlace.Server> server() {
        return url.getText().isBlank()
                ? Optional.empty()
                : Optional.of(new LedgerPlace.Server(
                        url.getText().strip(), user.getText().strip(), password.getText()));
    }

    private Settings settings() {
        return before.withServer(server())
                .withFolder(folder())
                .withBay(bay.getText())
                .withLanguage(language.getValue())
                .withLook(new Look(text.getValue(), dark.isSelected() ? Look.Paper.DARK : Look.Paper.LIGHT))
                .withClips(copy.isSelected() ? Settings.Clips.COPY : Settings.Clips.STAY);
    }
}
