package org.toeline.desk.film;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;

/** Playing by the mouse: play or stand, how fast, which way, both views in step, and what ties them. */
public final class FilmBar extends VBox {

    private final Films films;
    private final Button play = new Button();
    private final ComboBox<Integer> slowed = new ComboBox<>();
    private final ToggleButton backwards = toggle("film-backwards", "film.backwards");
    private final ToggleButton together = toggle("film-together", "film.together");
    private final Label tie = new Label();
    private boolean updating;

    public FilmBar(Films films) {
        super(4);
        setId("film");
        this.films = films;
        play.setId("film-play");
        play.setMinWidth(Look.px(86));
        play.setFocusTraversable(false);
        play.setOnAction(e -> films.player().toggle());
        slowed.setId("film-speed");
        slowed.setAccessibleText(Texts.of("film.speed"));
        slowed.setFocusTraversable(false);
        slowed.setMinWidth(Region.USE_PREF_SIZE);
        slowed.getItems().setAll(1, 2, 4, 8);
        slowed.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable Integer times) {
                return times == null ? "" : Texts.of("film.speed." + times);
            }

            @Override
            public Integer fromString(String text) {
                throw new UnsupportedOperationException("speeds are chosen, not typed");
            }
        });
        slowed.setOnAction(e -> {
            if (!updating && slowed.getValue() != null) {
                films.player()
                        .pace(new Pace(slowed.getValue(), films.player().pace().direction()));
            }
        });
        backwards.setOnAction(e -> films.player().pace(films.player().pace().turned()));
        together.setOnAction(e -> films.toggleTogether());
        tie.setId("film-tie");
        tie.setWrapText(true);
        tie.setMinHeight(Region.USE_PREF_SIZE);
        FlowPane row = new FlowPane(6, 6, play, slowed, backwards, together, tie);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(row);
    }

    private static ToggleButton toggle(String id, String key) {
        ToggleButton button = new ToggleButton(Texts.of(key));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setFocusTraversable(false);
        return button;
    }

    /** @param film whether the large view has one */
    public void update(boolean film) {
        updating = true;
        setVisible(film);
        setManaged(film);
        play.setText(Texts.of(films.player().plays() ? "film.stand" : "film.play"));
        slowed.setValue(films.player().pace().slowed());
        backwards.setSelected(films.player().pace().direction() == Pace.Direction.BACKWARDS);
        together.setDisable(films.companion().isEmpty());
        together.setSelected(films.together());
        tie.setManaged(films.together());
        tie.setText(films.together() ? TieWords.of(films.tie().orElseThrow()) : "");
        updating = false;
    }
}
