package org.toeline.desk.across;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import org.toeline.advice.Words;
import org.toeline.desk.across.StillSource.Still;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;
import org.toeline.paint.ComparedStill;

/** The ticked lessons' address frames side by side, as large as there is room for. */
final class StillsPane extends VBox {

    private static final double GAP = 10;
    private static final double LEAST = 200;
    /** Stands for drawing no lesson's figure over the others. */
    private static final int NOBODY = 0;

    private final TilePane tiles = new TilePane(GAP, GAP);
    private final ScrollPane scroll = new ScrollPane(tiles);
    private final ComboBox<Integer> over = new ComboBox<>();
    private final CheckBox own = new CheckBox(Texts.of("across.own"));
    private final ToggleGroup views = new ToggleGroup();
    private final Map<Integer, String> captions = new LinkedHashMap<>();
    private final Map<Integer, Still> stills = new LinkedHashMap<>();
    private final Map<Integer, StackPane> places = new LinkedHashMap<>();
    private final Runnable again;
    private View view = View.FACE_ON;
    private Words words = Words.usual();

    /**
     * @param again is called when the stills of another view are wanted
     * @param below stands below the pictures
     */
    StillsPane(Runnable again, Region below) {
        this.again = again;
        getStyleClass().add("surround");
        setSpacing(8);
        setPadding(new Insets(10));
        FlowPane controls = new FlowPane(10, 6);
        controls.setAlignment(Pos.CENTER_LEFT);
        for (View each : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            ToggleButton button = new ToggleButton(Texts.of("view." + each.id()));
            button.setId("across-" + each.id());
            button.setToggleGroup(views);
            button.setSelected(each == view);
            button.setOnAction(e -> {
                button.setSelected(true);
                view = each;
                again.run();
            });
            controls.getChildren().add(button);
        }
        own.setId("across-own");
        own.setSelected(true);
        own.setOnAction(e -> paint());
        over.setId("across-over");
        over.setAccessibleText(Texts.of("across.over"));
        over.setConverter(Controls.names(this::called));
        over.setOnAction(e -> paint());
        controls.getChildren().addAll(own, new Label(Texts.of("across.over")), over);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("edge-to-edge");
        scroll.viewportBoundsProperty().addListener((o, a, b) -> fit());
        tiles.setId("across-stills");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(controls, scroll, below);
        setMinWidth(320);
    }

    private String called(int id) {
        return id == NOBODY ? Texts.of("across.over.none") : captions.getOrDefault(id, "");
    }

    View view() {
        return view;
    }

    /** Other lessons from now on; their pictures come one by one. */
    void expect(Map<Integer, String> called, Words in) {
        words = in;
        boolean chosen = captions.size() > 1;
        captions.clear();
        captions.putAll(called);
        stills.clear();
        places.clear();
        tiles.getChildren().clear();
        called.forEach((id, caption) -> {
            Label waiting = new Label(caption + "\n" + Texts.of("across.still.waiting"));
            waiting.setWrapText(true);
            StackPane place = new StackPane(waiting);
            place.setId("across-still-" + id);
            places.put(id, place);
            tiles.getChildren().add(place);
        });
        List<Integer> choices = new ArrayList<>(List.of(NOBODY));
        choices.addAll(called.keySet());
        Integer before = over.getValue();
        over.getItems().setAll(choices);
        over.setValue(
                chosen && before != null && choices.contains(before)
                        ? before
                        : choices.get(choices.size() > 2 ? 1 : 0));
        fit();
    }

    void put(Still still) {
        if (places.containsKey(still.lessonId())) {
            stills.put(still.lessonId(), still);
            if (Integer.valueOf(still.lessonId()).equals(over.getValue())) {
                paint();
            } else {
                paint(still);
                fit();
            }
        }
    }

    /** What is shown, in the order of the lessons, as it is shown. */
    List<ComparedStill> shown() {
        List<ComparedStill> all = new ArrayList<>();
        captions.keySet().forEach(id -> Optional.ofNullable(stills.get(id)).ifPresent(s -> all.add(compared(s))));
        return all;
    }

    List<Still> stills() {
        return List.copyOf(stills.values());
    }

    private ComparedStill compared(Still still) {
        Integer other = over.getValue();
        Optional<Still> drawn =
                other == null || other == still.lessonId() ? Optional.empty() : Optional.ofNullable(stills.get(other));
        Optional<ComparedStill.Over> figure = drawn.flatMap(d -> d.figure()
                .map(f -> new ComparedStill.Over(
                        Texts.of("across.figure-of", Objects.requireNonNull(captions.get(d.lessonId()))), f)));
        return new ComparedStill(
                still.plane(),
                captions.getOrDefault(still.lessonId(), ""),
                still.picture(),
                still.remark(),
                still.figure(),
                own.isSelected() ? ComparedStill.Own.DRAWN : ComparedStill.Own.HIDDEN,
                figure,
                words);
    }

    private void paint() {
        stills.values().forEach(this::paint);
        fit();
    }

    private void paint(Still still) {
        ImageView shown = new ImageView(SwingFXUtils.toFXImage(compared(still).image(), null));
        shown.setPreserveRatio(true);
        shown.setSmooth(true);
        shown.setAccessibleText(captions.get(still.lessonId()) + ". " + still.remark());
        Objects.requireNonNull(places.get(still.lessonId())).getChildren().setAll(shown);
    }

    /** The columns that make the pictures largest. */
    private void fit() {
        double width = scroll.getViewportBounds().getWidth();
        double height = scroll.getViewportBounds().getHeight();
        int count = places.size();
        if (count == 0 || width < 1) {
            return;
        }
        double shape =
                shown().stream().mapToDouble(ComparedStill::shape).findFirst().orElse(1.25);
        double best = LEAST;
        int columns = 1;
        for (int c = 1; c <= count; c++) {
            int rows = (count + c - 1) / c;
            double wide = Math.min((width - (c - 1) * GAP - 2) / c, ((height - (rows - 1) * GAP - 2) / rows) / shape);
            if (wide > best) {
                best = wide;
                columns = c;
            }
        }
        tiles.setPrefColumns(columns);
        tiles.setPrefTileWidth(best);
        tiles.setPrefTileHeight(best * shape);
        for (StackPane place : places.values()) {
            place.getChildren().stream()
                    .filter(ImageView.class::isInstance)
                    .map(ImageView.class::cast)
                    .forEach(i -> i.setFitWidth(tiles.getPrefTileWidth()));
        }
    }
}
