package org.toeline.desk.shots;

import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;

/** How the screen of the shots is laid out: the table above, below it the picture and what changed. */
final class ShotsView extends StackPane {

    private static final double TABLE_SHARE = 0.52;
    private static final double PICTURE_SHARE = 0.48;
    /** Of the picture, beside usual text. */
    private static final double LEAST_PICTURE = 220;
    /** Of the headings and two rows, beside usual text. */
    private static final double LEAST_TABLE = 150;

    private final Label title = new Label();
    private final Label said = new Label();
    private final ProgressBar progress = new ProgressBar();
    private final Button stop = new Button(Texts.of("shots.stop"));
    private final HBox working = new HBox(8, new Label(Texts.of("shots.working")), progress, stop);

    ShotsView(
            ShotBar bar,
            AirBar air,
            ShotTable table,
            ShotPlotPane picture,
            DifferencesPane differences,
            TogetherPane together) {
        setId("shots");
        getStyleClass().add("paper");
        title.setId("shots-title");
        title.getStyleClass().add("next");
        said.setId("shots-said");
        said.getStyleClass().add("doubt");
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        VBox head = new VBox(6, title, bar, air);
        head.setPadding(new Insets(8, 12, 6, 12));
        working.setId("shots-working");
        stop.setId("shots-stop");
        working.setPadding(new Insets(0, 12, 2, 12));
        working.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        VBox tableAndSaid = new VBox(2, table, working, said);
        VBox.setVgrow(table, javafx.scene.layout.Priority.ALWAYS);
        said.setPadding(new Insets(0, 12, 2, 12));
        tableAndSaid.setMinHeight(Look.px(LEAST_TABLE));
        TabPane tabs = new TabPane(tab("changed", differences), tab("together", together));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        SplitPane below = new SplitPane(picture, tabs);
        below.setDividerPositions(PICTURE_SHARE);
        SplitPane all = new SplitPane(tableAndSaid, below);
        all.setOrientation(Orientation.VERTICAL);
        all.setDividerPositions(TABLE_SHARE);
        BorderPane root = new BorderPane(all);
        root.setTop(head);
        below.setMinHeight(Look.px(LEAST_PICTURE));
        // in a low window the screen is scrolled, so that neither the table nor the picture is squeezed
        ScrollPane whole = new ScrollPane(root);
        whole.setFitToWidth(true);
        whole.setFitToHeight(true);
        whole.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        whole.getStyleClass().addAll("paper", "edge-to-edge");
        getChildren().add(whole);
        said("");
        working(-1);
    }

    /** How far a long reckoning has come, 0 to 1; below zero there is none. */
    void working(double share) {
        progress.setProgress(share);
        working.setManaged(share >= 0);
        working.setVisible(share >= 0);
    }

    void onStop(Runnable act) {
        stop.setOnAction(e -> act.run());
    }

    private static Tab tab(String id, Node content) {
        Tab tab = new Tab(Texts.of("shots.tab." + id), content);
        tab.setId("shots-tab-" + id);
        return tab;
    }

    void title(String text) {
        title.setText(text);
    }

    /** What is to be said of the row that is typed into, or of all shots together. */
    void said(String text) {
        said.setText(text);
        said.setManaged(!text.isEmpty());
        said.setVisible(!text.isEmpty());
    }

    /** Something laid over the whole screen until it is taken away. */
    void over(Node pane) {
        getChildren().add(pane);
    }

    void away(Node pane) {
        getChildren().remove(pane);
    }
}
