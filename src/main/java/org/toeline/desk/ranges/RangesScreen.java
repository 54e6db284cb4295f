package org.toeline.desk.ranges;

import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.toeline.advice.Words;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.KeptFocus;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** All ranges for a club: limits, aim, on whose word, and the coach's own in their place. */
public final class RangesScreen implements Screen {

    private final Studio studio;
    private final ComboBox<Club> club = new ComboBox<>();
    private final GridPane grid = new GridPane();
    private final Map<ReadingKind, RangeFields> fields = new EnumMap<>(ReadingKind.class);
    private final VBox root;

    public RangesScreen(Studio studio) {
        this.studio = studio;
        club.setId("ranges-club");
        club.getItems().setAll(Club.values());
        club.setAccessibleText(Texts.of("ranges.club"));
        club.setConverter(
                Controls.names(c -> Controls.sentence(studio.words().get().name(c))));
        club.setOnAction(e -> show());
        grid.setHgap(14);
        grid.setVgap(6);
        grid.setPadding(new Insets(4, 20, 20, 4));
        VBox top = top();
        // beside larger text the table alone would be a line or two
        VBox above = RangeFields.isAbreast() ? new VBox(top) : new VBox();
        ScrollPane scroll = new ScrollPane(RangeFields.isAbreast() ? grid : new VBox(12, top, grid));
        scroll.setFitToWidth(true);
        scroll.getStyleClass().addAll("paper", "edge-to-edge");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        root = new VBox(12, above, scroll);
        root.setPadding(new Insets(16));
        root.getStyleClass().add("paper");
        studio.ranges().listen(this::show);
    }

    private VBox top() {
        Label title = new Label(Texts.of("ranges.title"));
        title.getStyleClass().add("first-title");
        Label text = new Label(Texts.of("ranges.text"));
        text.setWrapText(true);
        text.setMaxWidth(900);
        text.setMinHeight(Region.USE_PREF_SIZE);
        FlowPane row = new FlowPane(
                8,
                8,
                club,
                Controls.button("ranges-take-in", "ranges.take-in", this::takeIn),
                Controls.button("ranges-give-out", "ranges.give-out", this::giveOut),
                Controls.button("ranges-restore-all", "ranges.restore-all", this::restoreAll));
        return new VBox(8, title, text, row);
    }

    private void show() {
        if (club.getValue() == null) {
            return;
        }
        KeptFocus.over(grid, this::fill);
    }

    private void fill() {
        grid.getChildren().clear();
        String[] heads = {
            "ranges.reading",
            "ranges.low",
            "ranges.aim",
            "ranges.high",
            "ranges.unit",
            RangeFields.isAbreast() ? "ranges.word" : "",
            ""
        };
        for (int i = 0; i < heads.length; i++) {
            Label head = new Label(heads[i].isEmpty() ? "" : Texts.of(heads[i]));
            head.getStyleClass().add("hint");
            head.setWrapText(true);
            head.setMinHeight(Region.USE_PREF_SIZE);
            grid.add(head, i, 0);
        }
        Words words = studio.words().get();
        List<RangeRow> rows = java.util.Arrays.stream(ReadingKind.values())
                .map(kind -> RangeRow.of(studio.ranges(), kind, club.getValue()))
                .sorted(java.util.Comparator.comparing(row -> row.counts().isEmpty()))
                .toList();
        for (int i = 0; i < rows.size(); i++) {
            RangeRow row = rows.get(i);
            // what is typed in another row, and is no range yet, stays there
            fields.compute(
                            row.kind(),
                            (kind, had) -> had != null && had.isOf(row)
                                    ? had
                                    : new RangeFields(row, words, this::put, this::restore))
                    .into(grid, i + 1);
        }
    }

    private void put(org.toeline.advice.Range range) {
        change(r -> r.put(range));
    }

    private void restore(RangeRow row) {
        change(r -> r.restore(row.kind(), row.club()));
    }

    private void restoreAll() {
        new DialogFrame(root.getScene().getWindow(), Texts.of("ranges.restore-all.title"))
                .heading(Texts.of("ranges.restore-all.sure"))
                .text(Texts.of("ranges.restore-all.text"))
                .leave(Texts.of("dialog.cancel"))
                .destroy("sure-restore-all", Texts.of("ranges.restore-all.yes"), () -> change(r -> r.restoreAll()))
                .show();
    }

    /** A change of the coach's own ranges. */
    private interface Change {

        void make(org.toeline.desk.records.OwnRanges ranges) throws IOException;
    }

    private void change(Change change) {
        try {
            change.make(studio.ranges());
            studio.say().accept(Texts.of("ranges.kept"));
        } catch (IOException e) {
            studio.say().accept(Texts.of("ranges.not-kept", String.valueOf(e.getMessage())));
        }
    }

    private static FileDialog files(String pressed) {
        return new FileDialog(FileDialog.Kind.RANGES, pressed).showing(Texts.of("screen.ranges"), "*.json");
    }

    private void takeIn() {
        files("ranges.take-in").open(root.getScene().getWindow()).ifPresent(file -> {
            try {
                int count = studio.ranges().takeIn(file);
                studio.say().accept(Texts.of("ranges.taken-in", count));
            } catch (IOException | IllegalArgumentException e) {
                studio.say().accept(String.valueOf(e.getMessage()));
            }
        });
    }

    private void giveOut() {
        files("ranges.give-out").save(root.getScene().getWindow()).ifPresent(file -> {
            try {
                studio.ranges().giveOut(file);
                studio.say().accept(Texts.of("kept", file));
            } catch (IOException e) {
                studio.say().accept(Texts.of("ranges.not-kept", String.valueOf(e.getMessage())));
            }
        });
    }

    @Override
    public String id() {
        return "ranges";
    }

    @Override
    public Parent root() {
        root.setAlignment(Pos.TOP_LEFT);
        return root;
    }

    @Override
    public void entered() {
        club.setValue(studio.model().sheet().club());
        show();
    }
}
