package org.toeline.desk.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.CauseWords;
import org.toeline.advice.Contradiction;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Finding;
import org.toeline.advice.FindingWords;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Slip;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.advice.page.PlayerWords;
import org.toeline.desk.look.Look;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;

/** The findings as a column of band gauges; on top, large, the one thing to change first with its sentence. */
public final class FindingsPane extends VBox {

    private static final double WIDTH = 360;
    /** In a narrow window. */
    private static final double LEAST = 270;

    private final Label title = new Label();
    private final Label sentence = new Label();
    private final Label follows = new Label();
    private final Label help = new Label();
    private final Label fitted = new Label();
    private final Button why = Controls.button("why-first", "why.button", this::why);
    private final Button mend = new Button();
    private final VBox doubts = new VBox(4);
    private final ScrollPane scroll = new ScrollPane();
    private final Gauges gauges = new Gauges(scroll);
    private Optional<Assessment> shown = Optional.empty();
    private Words words = Words.usual();

    /** @param mends is told which slip is to be undone */
    public FindingsPane(Consumer<Slip> mends) {
        mend.setOnAction(e -> slip().ifPresent(mends));
        setId("findings");
        setPrefWidth(Look.px(WIDTH) + 44);
        setMinWidth(LEAST + 44);
        widthProperty().addListener((o, before, now) -> {
            gauges.width(Math.max(LEAST, Math.min(Look.px(WIDTH), now.doubleValue() - 44)));
        });
        getStyleClass().add("paper");
        title.getStyleClass().add("first-title");
        sentence.getStyleClass().add("first-sentence");
        sentence.setId("first-sentence");
        follows.getStyleClass().add("first-follows");
        help.getStyleClass().add("first-follows");
        fitted.getStyleClass().add("first-follows");
        for (Label label : List.of(title, sentence, follows, help, fitted)) {
            label.setWrapText(true);
            label.setMaxWidth(Look.px(WIDTH));
            label.setMinHeight(USE_PREF_SIZE);
        }
        mend.setId("mend");
        mend.setWrapText(true);
        mend.setMaxWidth(Look.px(WIDTH));
        shown(why, false);
        shown(mend, false);
        VBox first = new VBox(6, title, sentence, follows, help, mend, why, doubts);
        first.getStyleClass().add("first-card");
        first.setPadding(new Insets(14));
        VBox all = new VBox(12, first, fitted, gauges);
        all.setPadding(new Insets(12));
        scroll.setContent(all);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
        empty();
    }

    public void words(Words changed) {
        words = changed;
        gauges.words(changed);
    }

    private void empty() {
        title.setText(Texts.of("findings.none.title"));
        sentence.setText(Texts.of("findings.none"));
        shown(follows, Optional.empty());
        shown(help, Optional.empty());
    }

    /** Findings are on their way; those that stand there are of other marks. */
    public void reckoning() {
        shown = Optional.empty();
        title.setText(Texts.of("findings.reckoning.title"));
        sentence.setText(Texts.of("findings.reckoning"));
        shown(follows, Optional.empty());
        shown(help, Optional.empty());
        shown(fitted, Optional.empty());
        shown(why, false);
        shown(mend, false);
        doubts.getChildren().clear();
        gauges.show(List.of());
    }

    /** Shows what follows from the marks. */
    public void show(Assessment assessment) {
        Advice advice = assessment.advice();
        shown = Optional.of(assessment);
        shown(why, advice.first().isPresent());
        shown(mend, slip().isPresent());
        doubts.getChildren().clear();
        assessment.posture().doubts().forEach(d -> {
            Label label = new Label("✕ " + new ContradictionWords(words).doubt(d));
            label.getStyleClass().add("doubt");
            label.setWrapText(true);
            label.setMaxWidth(Look.px(WIDTH));
            label.setMinHeight(USE_PREF_SIZE);
            doubts.getChildren().add(label);
        });
        if (advice.withheld().isPresent()) {
            Contradiction c = advice.withheld().get();
            title.setText(words.text("contradiction.title"));
            sentence.setText(new ContradictionWords(words).clash(c));
            shown(follows, Optional.of(new ContradictionWords(words).slip(c)));
            shown(
                    help,
                    slip().isPresent() ? Optional.empty() : Optional.of(new ContradictionWords(words).mend(c) + "."));
            mend.setText(new ContradictionWords(words).mend(c));
        } else if (advice.findings().isEmpty()) {
            empty();
        } else if (!advice.isJudged()) {
            title.setText(new FindingWords(words).nothing(advice));
            sentence.setText(Texts.of("findings.none"));
            shown(follows, Optional.empty());
            shown(help, Optional.empty());
        } else if (advice.first().isPresent()) {
            FirstThing first = advice.first().get();
            title.setText(new FindingWords(words).fault(first.finding()) + ": "
                    + words.figure(first.finding()).replace(" ± ", "\u00a0±\u00a0"));
            sentence.setText(PlayerWords.of(words, assessment).instruction(first.finding()));
            shown(follows, new CauseWords(words).mayFollow(first));
            shown(help, Optional.empty());
        } else {
            title.setText(Texts.of("findings.good.title"));
            sentence.setText(Texts.of(
                    "findings.good",
                    counted(advice, Verdict.IN_RANGE),
                    counted(advice, Verdict.TOO_CLOSE),
                    counted(advice, Verdict.CANNOT_TELL)));
            shown(follows, Optional.empty());
            shown(
                    help,
                    advice.findings().stream()
                            .filter(f -> f.verdict().equals(Optional.of(Verdict.CANNOT_TELL)))
                            .findFirst()
                            .map(f -> words.name(f.kind()) + ": "
                                    + words.help(f.reading().dominatedBy())));
        }
        shown(
                fitted,
                advice.withheld().isPresent()
                        ? Optional.empty()
                        : advice.findings().stream()
                                .flatMap(f -> f.range().stream())
                                .filter(r -> r.statureM().isPresent())
                                .findFirst()
                                .map(words::fitted));
        arrange(advice);
    }

    /** What one button can turn round; a mirrored clip has to be taken anew. */
    private Optional<Slip> slip() {
        return shown.flatMap(a -> a.advice().withheld())
                .map(Contradiction::likely)
                .filter(s -> s != Slip.UNKNOWN && s != Slip.MIRRORED);
    }

    private static void shown(Button button, boolean isShown) {
        button.setVisible(isShown);
        button.setManaged(isShown);
    }

    private void why() {
        shown.ifPresent(a -> WhyFirst.show(a, words, getScene().getWindow()));
    }

    private static long counted(Advice advice, Verdict verdict) {
        return advice.findings().stream()
                .filter(f -> f.verdict().equals(Optional.of(verdict)))
                .count();
    }

    private static void shown(Label label, Optional<String> text) {
        label.setText(text.orElse(""));
        label.setVisible(text.isPresent());
        label.setManaged(text.isPresent());
    }

    /**
     * The first thing to change stands first, then what else is out of range, then the rest as in the catalogue; where the
     * marks contradict each other no figure is earned, and none is shown.
     */
    private void arrange(Advice advice) {
        List<Finding> all = new ArrayList<>();
        advice.first().ifPresent(first -> all.add(first.finding()));
        advice.findings().stream()
                .filter(f -> f.verdict().map(Verdict::isOut).orElse(false) && !all.contains(f))
                .forEach(all::add);
        advice.findings().stream().filter(f -> !all.contains(f)).forEach(all::add);
        gauges.show(advice.withheld().isPresent() ? List.of() : all);
    }
}
