package org.toeline.desk.findings;

import javafx.geometry.Insets;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.jfree.fx.FXGraphics2D;
import org.toeline.advice.Assessment;
import org.toeline.advice.CauseChain;
import org.toeline.advice.CauseGraph;
import org.toeline.advice.Words;
import org.toeline.desk.Texts;
import org.toeline.handout.CausePicture;

/** Why this is the first thing to change: the chain of causes as it stands for this player, and what each step rests on. */
final class WhyFirst {

    private static final double WIDTH = 860;
    private static final double HEIGHT = 620;

    private WhyFirst() {
    }

    static void show(Assessment assessment, Words words, Window window) {
        CauseGraph graph = CauseGraph.of(assessment.advice(), CauseChain.shipped(), assessment.sheet().club());
        CausePicture picture = new CausePicture(graph, words);
        double scale = Math.min(1, WIDTH / picture.width());
        Canvas canvas = new Canvas(picture.width() * scale, picture.height() * scale);
        canvas.setId("chain");
        canvas.setAccessibleText(picture.described());
        FXGraphics2D g = new FXGraphics2D(canvas.getGraphicsContext2D());
        g.scale(scale, scale);
        picture.paint(g);
        Label intro = wrapped(Texts.of("why.text", words.name(assessment.sheet().club())));
        VBox content = new VBox(10, intro, canvas);
        content.setPadding(new Insets(16));
        for (CauseChain.Link link : graph.edges()) {
            Label step = wrapped(words.name(link.cause()) + " → " + words.name(link.effect()) + ": " + words.step(link));
            Label grounds = wrapped(words.grounds(link));
            grounds.getStyleClass().add("hint");
            content.getChildren().add(new VBox(1, step, grounds));
        }
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setPrefSize(WIDTH + 60, HEIGHT);
        scroll.getStyleClass().addAll("paper", "edge-to-edge");
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(window);
        dialog.setTitle(Texts.of("why.title"));
        dialog.setResizable(true);
        dialog.getDialogPane().getButtonTypes().add(ButtonType.CLOSE);
        dialog.getDialogPane().setContent(scroll);
        dialog.show();
    }

    private static Label wrapped(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMaxWidth(WIDTH);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
