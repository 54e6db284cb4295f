package org.toeline.desk.findings;

import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.advice.Assessment;
import org.toeline.advice.CauseChain;
import org.toeline.advice.CauseGraph;
import org.toeline.advice.CauseWords;
import org.toeline.advice.Words;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.paint.CausePicture;

/** Why this is the first thing to change: the chain of causes as it stands for this player, and what each step rests on. */
final class WhyFirst {

    private static final double PICTURE = 620;
    private static final double STEPS = 420;

    private WhyFirst() {}

    static void show(Assessment assessment, Words words, Window window) {
        CauseGraph graph = CauseGraph.of(
                assessment.advice(), CauseChain.shipped(), assessment.sheet().club());
        CausePicture picture = new CausePicture(graph, words);
        double scale = Math.min(1, PICTURE / picture.width());
        Canvas canvas = new Canvas(picture.width() * scale, picture.height() * scale);
        canvas.setId("chain");
        canvas.setAccessibleText(picture.described());
        picture.paint(Look.now().ink(canvas, scale));
        VBox steps = new VBox(
                10, wrapped(Texts.of("why.text", words.name(assessment.sheet().club()))));
        for (CauseChain.Link link : graph.edges()) {
            Label step = wrapped(words.name(link.cause()) + " → " + words.name(link.effect()) + ": "
                    + new CauseWords(words).step(link, graph.out(link.cause())));
            Label grounds = wrapped(new CauseWords(words).grounds(link));
            grounds.getStyleClass().add("hint");
            steps.getChildren().add(new VBox(1, step, grounds));
        }
        new DialogFrame(window, Texts.of("why.title"))
                .middle(new HBox(20, canvas, steps))
                .leave(Texts.of("dialog.close"))
                .show();
    }

    private static Label wrapped(String text) {
        Label label = DialogFrame.wrapped(text);
        label.setPrefWidth(Look.px(STEPS));
        return label;
    }
}
