package org.toeline.desk.across;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import org.toeline.across.AcrossCsv;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.document.WholeFile;
import org.toeline.paint.AcrossPlot;

/** Writes what is shown where the coach wants it. */
final class AcrossExport {

    /** What it is written as. */
    enum Format {
        PNG,
        PDF,
        CSV;

        String ending() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Background background;
    private final Consumer<String> say;

    AcrossExport(Background background, Consumer<String> say) {
        this.background = background;
        this.say = say;
    }

    /** @param plot what is shown when an item is chosen */
    MenuButton button(Supplier<Optional<AcrossPlot>> plot) {
        MenuButton button = new MenuButton(Texts.of("across.export"));
        button.setId("across-export");
        for (Format format : Format.values()) {
            MenuItem item = new MenuItem(Texts.of("across.export." + format.ending()));
            item.setId("across-export-" + format.ending());
            item.setOnAction(e -> choose(button, plot, format));
            button.getItems().add(item);
        }
        return button;
    }

    private void choose(MenuButton button, Supplier<Optional<AcrossPlot>> plot, Format format) {
        Optional<AcrossPlot> shown = plot.get();
        if (shown.isEmpty()) {
            say.accept(Texts.of("across.export.nothing"));
            return;
        }
        new FileDialog(FileDialog.Kind.PAGES, "across.export")
                .named("across-lessons." + format.ending())
                .save(button.getScene().getWindow())
                .ifPresent(file -> write(shown.get(), format, file));
    }

    void write(AcrossPlot plot, Format format, Path file) {
        background.run(
                () -> {
                    WholeFile.write(
                            file,
                            switch (format) {
                                case PNG -> plot.png();
                                case PDF -> plot.pdf();
                                case CSV -> AcrossCsv.of(plot.comparison()).getBytes(StandardCharsets.UTF_8);
                            });
                    return file;
                },
                done -> say.accept(Texts.of("across.exported", done)));
    }
}
