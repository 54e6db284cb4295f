package org.toeline.desk.sheet;

import java.io.IOException;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.advice.Words;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.assist.learn.Corrections;
import org.toeline.assist.learn.Learnt;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.document.OwnDocument;
import org.toeline.language.Language;
import org.toeline.mark.View;

/** What was learnt of the coach's corrections, place by place, and a button that forgets it. */
public final class CorrectionsDialog {

    private static final double HALF_OF_95 = 1.96;
    /** Of a grown player at address, about; only to show shares of it as lengths. */
    private static final double SPAN_M = 1.5;

    private static final double PLACE_WIDTH = 130;
    private static final double OFFSET_WIDTH = 310;

    private final Learning learning;
    private final Words words;
    private final VBox content = new VBox(12);

    private CorrectionsDialog(Learning learning, Words words) {
        this.learning = learning;
        this.words = words;
    }

    /** @param say is told how forgetting went */
    public static void show(Learning learning, Words words, Window window, Consumer<String> say) {
        CorrectionsDialog dialog = new CorrectionsDialog(learning, words);
        dialog.fill();
        DialogFrame frame = new DialogFrame(window, Texts.of("corrections.title"))
                .middle(dialog.content)
                .leave(Texts.of("dialog.close"));
        if (!dialog.all().isEmpty()) {
            frame.apart(
                    "corrections-forget",
                    Texts.of("corrections.forget"),
                    () -> frame.ask(
                            Texts.of("corrections.forget.sure"),
                            Texts.of("corrections.forget.not"),
                            Texts.of("corrections.forget.yes"),
                            () -> say.accept(dialog.forget())));
        }
        frame.show();
    }

    private String forget() {
        try {
            learning.forget();
            return Texts.of("corrections.forgotten");
        } catch (IOException e) {
            return Texts.of("corrections.not-forgotten", learning.own().file(), OwnDocument.reason(e));
        } finally {
            fill();
        }
    }

    private List<Corrections> all() {
        return learning.own().book().all().stream()
                .sorted(Comparator.comparing(Corrections::view).thenComparing(Corrections::landmark))
                .toList();
    }

    private void fill() {
        List<Corrections> all = all();
        content.getChildren()
                .setAll(DialogFrame.wrapped(Texts.of(
                        "corrections.text", Learnt.LEAST, learning.own().file())));
        if (all.isEmpty()) {
            Label none = DialogFrame.wrapped(Texts.of("corrections.none"));
            none.setId("corrections-none");
            content.getChildren().add(none);
            return;
        }
        Label length = DialogFrame.wrapped(Texts.of("corrections.length"));
        length.getStyleClass().add("hint");
        content.getChildren().addAll(grid(all), length);
    }

    private GridPane grid(List<Corrections> all) {
        GridPane grid = new GridPane();
        grid.setId("corrections");
        grid.setHgap(14);
        grid.setVgap(4);
        Label misses = head("corrections.misses");
        misses.setTooltip(new Tooltip(Texts.of("corrections.misses.hint")));
        grid.addRow(
                0,
                head("corrections.place"),
                head("corrections.moved"),
                head("corrections.agreed"),
                misses,
                head("corrections.offset"),
                head("corrections.spread"));
        Set<View> headed = EnumSet.noneOf(View.class);
        for (Corrections c : all) {
            if (headed.add(c.view())) {
                Label view = new Label(Words.sentenceCase(words.name(c.view())));
                view.getStyleClass().add("strong");
                grid.add(view, 0, grid.getRowCount(), GridPane.REMAINING, 1);
            }
            Optional<Learnt> learnt = c.learnt();
            Label offset = cell(learnt.map(l -> offset(c, l)).orElse(Texts.of("corrections.not-yet")), OFFSET_WIDTH);
            offset.setId("corrections-" + c.view().id() + "-" + c.landmark().id());
            grid.addRow(
                    grid.getRowCount(),
                    cell(words.name(c.landmark()), PLACE_WIDTH),
                    number(String.valueOf(c.count(Kind.MOVED))),
                    number(String.valueOf(c.count(Kind.AGREED))),
                    number(String.valueOf(c.misses())),
                    offset,
                    number("± " + length(HALF_OF_95 * learnt.map(Learnt::spread).orElse(c.stated()))));
        }
        return grid;
    }

    private String offset(Corrections of, Learnt learnt) {
        String along = "corrections." + of.view().id() + (learnt.towards() < 0 ? ".away" : ".towards");
        return Texts.of(
                "corrections.offset.of",
                length(Math.abs(learnt.towards())),
                Texts.of(along),
                length(Math.abs(learnt.up())),
                Texts.of(learnt.up() < 0 ? "corrections.down" : "corrections.up"));
    }

    /** In the coach's unit. */
    private String length(double share) {
        Locale locale = Language.spoken();
        return String.format(locale, "%.1f", words.lengthUnit().fromMetres(share * SPAN_M))
                + words.text("unit." + words.lengthUnit().id());
    }

    private static Label head(String key) {
        Label label = new Label(Texts.of(key));
        label.getStyleClass().add("hint");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private static Label cell(String text, double width) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setPrefWidth(Look.px(width));
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private static Node number(String text) {
        Label label = new Label(text);
        label.setMinWidth(Region.USE_PREF_SIZE);
        GridPane.setHalignment(label, HPos.RIGHT);
        return label;
    }
}
