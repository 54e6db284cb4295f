package org.toeline.desk.handover;

import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.GridPane;
import javafx.stage.Window;
import javax.print.PrintService;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.handout.Paper;

/** Which printer prints the page, and how often. */
final class PrintDialog {

    private final Studio studio;
    private final HandOver handOver;

    PrintDialog(Studio studio, HandOver handOver) {
        this.studio = studio;
        this.handOver = handOver;
    }

    void ask(List<PrintService> printers, Window owner) {
        if (printers.isEmpty()) {
            studio.say().accept(Texts.of("print.none"));
            return;
        }
        ComboBox<PrintService> printer = new ComboBox<>();
        printer.setId("print-by");
        printer.getItems().setAll(printers);
        printer.setConverter(Controls.names(PrintService::getName));
        printer.setValue(printers.get(0));
        Spinner<Integer> copies = new Spinner<>(1, Printers.MOST_COPIES, 1);
        copies.setId("print-copies");
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(8);
        Label by = new Label(Texts.of("print.by"));
        by.setLabelFor(printer);
        Label often = new Label(Texts.of("print.copies"));
        often.setLabelFor(copies);
        grid.addRow(0, by, printer);
        grid.addRow(1, often, copies);
        new DialogFrame(owner, Texts.of("print.title"))
                .middle(grid)
                .leave(Texts.of("dialog.cancel"))
                .act("print-now", Texts.of("print.now"), () -> print(printer.getValue(), copies.getValue()))
                .show();
    }

    /** On the paper chosen for the handout. */
    void print(PrintService by, int copies) {
        String name = handOver.fileName("page", "pdf").orElse("");
        Paper paper = handOver.choices().paper();
        handOver.pdf(pdf -> studio.background()
                .run(
                        () -> {
                            Printers.print(pdf, paper, by, copies, name);
                            return by.getName();
                        },
                        printer -> studio.say().accept(Texts.of("print.done", printer))));
    }
}
