package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FlightBand;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.Estimate;
import org.toeline.flight.compare.State;

/** What changed from one setup to another, figure by figure, and beside it what was expected. */
final class DifferencesPane extends VBox {

    /** What can be compared: with another lesson, two setups of this one, or nothing. */
    record Choice(Comparing comparing, String words) {}

    /**
     * Beside the name, so that it is read in a narrow pane too; it alone may be broken into lines, since figures read badly then. A
     * table wider than the pane is scrolled, and what is out of sight are the middles that the change is made of.
     */
    private static final int SAYS = 1;

    private static final String HEAD = "shots-head";
    private static final String LINE = "shots-line";

    /** With larger text there is no room for a lesson's name beside what it is chosen for. */
    private static final double BESIDE = 1.2;

    private final ComboBox<Choice> with = new ComboBox<>();
    private final Label sentence = wrapped("shots-sentence");
    private final TextGrid grid = new TextGrid(column -> column == SAYS);
    private final TextGrid spreads = new TextGrid(column -> column > 0);
    private final Label help = wrapped("hint");
    private final TextGrid expected = new TextGrid(column -> true);
    private final ScrollPane scroll = new ScrollPane();
    private boolean filling;

    /** @param chosen told of what is to be compared */
    DifferencesPane(Consumer<Comparing> chosen) {
        super(8);
        setPadding(new Insets(8));
        with.setId("shots-compare");
        with.setConverter(new ShownAs<>(Choice::words));
        with.setMaxWidth(Double.MAX_VALUE);
        with.setOnAction(e -> {
            if (!filling && with.getValue() != null) {
                toTop();
                chosen.accept(with.getValue().comparing());
            }
        });
        Label label = new Label(Texts.of("shots.compare"));
        label.setLabelFor(with);
        label.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(with, Priority.ALWAYS);
        Pane row;
        if (Look.scale() > BESIDE) {
            row = new VBox(2, label, with);
        } else {
            HBox beside = new HBox(8, label, with);
            beside.setAlignment(Pos.CENTER_LEFT);
            row = beside;
        }
        grid.setId("shots-differences");
        help.setId("shots-differences-help");
        expected.setId("shots-expected");
        sentence.setId("shots-sentence");
        spreads.setId("shots-spreads");
        VBox all = new VBox(8, sentence, grid, spreads, help, expected);
        Insets inner = new Insets(2, 8, 2, 2);
        all.setPadding(inner);
        scroll.setId("shots-differences-scroll");
        scroll.setContent(all);
        scroll.setFitToWidth(true);
        // a sentence wraps
        scroll.viewportBoundsProperty()
                .addListener((o, before, now) -> List.of(sentence, help)
                        .forEach(text -> text.setMaxWidth(now.getWidth() - inner.getLeft() - inner.getRight())));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(row, scroll);
    }

    private static Label wrapped(String style) {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    /** What can be chosen; the first choice is to compare with nothing. */
    void choices(List<Choice> choices, Comparing chosen) {
        if (with.getValue() != null && !with.getValue().comparing().sameAs(chosen)) {
            toTop();
        }
        filling = true;
        with.getItems().setAll(choices);
        with.setValue(choices.stream()
                .filter(c -> c.comparing().sameAs(chosen))
                .findFirst()
                .orElse(choices.get(0)));
        with.setDisable(choices.size() < 2);
        filling = false;
    }

    /** Other things are to be read: one begins with the first of them. */
    void toTop() {
        scroll.setVvalue(0);
        scroll.setHvalue(0);
    }

    void show(Reckoned reckoned, ShotUnits units, List<String> expectations) {
        ComparedSetups compared = reckoned.compared();
        grid.show(
                compared.comparison().isPresent()
                        ? differences(compared, units)
                        : middles(compared.setups().get(0), compared, units));
        sentence.setText(Stream.concat(change(compared, units).stream(), pooled(compared))
                .collect(Collectors.joining("\n")));
        sentence.setManaged(!sentence.getText().isEmpty());
        spreads.show(compared.comparison().map(SpreadLines::of).orElse(List.of()));
        help.setText(help(compared, reckoned.withNeither()));
        List<List<TextGrid.Cell>> lines = new ArrayList<>();
        if (!expectations.isEmpty()) {
            lines.add(List.of(TextGrid.Cell.of(Texts.of("shots.expected"), HEAD)));
        }
        expectations.forEach(e -> lines.add(List.of(TextGrid.Cell.of(e, LINE))));
        DeliveryWords delivery = new DeliveryWords(units);
        compared.setups()
                .forEach(s -> delivery.faceAndPath(s).ifPresent(f -> lines.add(List.of(TextGrid.Cell.of(f, LINE)))));
        ComparedSetups.Setup last = compared.setups().get(compared.setups().size() - 1);
        last.window()
                .ifPresent(w -> last.middle(ShotFigure.BALL_SPEED)
                        .ifPresent(m -> lines.add(List.of(TextGrid.Cell.of(delivery.window(m.centre(), w), LINE)))));
        expected.show(lines);
    }

    private static Optional<String> change(ComparedSetups compared, ShotUnits units) {
        Optional<String> second =
                compared.order().map(o -> compared.setups().get(1).name());
        return compared.comparison().map(c -> new ChangeSentence(units).of(c, second));
    }

    /** What was hit with several setups and is taken together is said to be. */
    private static Stream<String> pooled(ComparedSetups compared) {
        return compared.setups().stream()
                .filter(s -> s.kinds().size() > 1)
                .map(s -> s.kinds().contains("")
                        ? Texts.of("shots.pooled.unnamed", s.name(), s.kinds().size() - 1)
                        : Texts.of("shots.pooled", s.name(), s.kinds().size()));
    }

    /** @param nothingYet whether there are shots of which nothing can be said yet */
    void reckoning(boolean nothingYet) {
        if (nothingYet) {
            help.setText(Texts.of("shots.differences.reckoning"));
        }
    }

    private String help(ComparedSetups compared, int withNeither) {
        StringBuilder text = new StringBuilder();
        if (compared.setups().stream().allMatch(s -> s.measured().isEmpty())) {
            return Texts.of("shots.differences.empty");
        }
        if (!compared.computed().isEmpty()) {
            text.append(Texts.of(
                            "shots.differences.computed",
                            FlightBand.MODELS.get(0).words()))
                    .append(' ');
        }
        compared.order()
                .ifPresent(order -> text.append(
                                order.inTurns()
                                        ? Texts.of("shots.differences.in-turns", order.runs())
                                        : Texts.of("shots.differences.one-after-the-other"))
                        .append(' '));
        if (withNeither > 0) {
            text.append(Texts.of("shots.differences.neither", withNeither)).append(' ');
        }
        text.append(compared.comparison()
                .map(c -> Texts.of("shots.differences.help", c.differences().size()))
                .orElseGet(() -> Texts.of("shots.differences.one")));
        return text.toString();
    }

    private static List<List<TextGrid.Cell>> differences(ComparedSetups compared, ShotUnits units) {
        ComparedSetups.Setup before = compared.setups().get(0);
        ComparedSetups.Setup after = compared.setups().get(1);
        List<List<TextGrid.Cell>> lines = new ArrayList<>();
        lines.add(row(
                HEAD,
                Texts.of("shots.head.figure"),
                Texts.of("shots.head.says"),
                Texts.of("shots.head.difference"),
                head(before),
                head(after)));
        for (Difference d : compared.comparison().orElseThrow().differences()) {
            List<TextGrid.Cell> line = new ArrayList<>(row(
                    LINE,
                    name(d.figure(), compared, units),
                    d.estimate().map(e -> change(d.figure(), e, units)).orElse("–"),
                    middle(before, d.figure(), units),
                    middle(after, d.figure(), units)));
            line.add(
                    SAYS,
                    new TextGrid.Cell(
                            mark(d.state()) + " " + d.words(),
                            List.of(LINE, "state-" + d.state().name().toLowerCase(Locale.ROOT)),
                            "says-" + d.figure().id()));
            lines.add(line);
        }
        return lines;
    }

    /** A name in two lines of about the same length: a wide head would leave no room for what is said. */
    private static String head(ComparedSetups.Setup setup) {
        String name = setup.name();
        int middle = name.length() / 2;
        int before = name.lastIndexOf(' ', middle);
        int after = name.indexOf(' ', middle);
        int at = after < 0 || before >= 0 && middle - before <= after - middle ? before : after;
        return at < 0 ? name : name.substring(0, at) + "\n" + name.substring(at + 1);
    }

    private static List<List<TextGrid.Cell>> middles(
            ComparedSetups.Setup setup, ComparedSetups compared, ShotUnits units) {
        List<List<TextGrid.Cell>> lines = new ArrayList<>();
        if (!setup.middles().isEmpty()) {
            lines.add(row(
                    HEAD, Texts.of("shots.head.figure"), Texts.of("shots.head.middle"), Texts.of("shots.head.count")));
        }
        setup.middles()
                .forEach(m -> lines.add(row(
                        LINE,
                        name(m.figure(), compared, units),
                        middle(setup, m.figure(), units),
                        String.valueOf(m.count()))));
        return lines;
    }

    private static String name(ShotFigure figure, ComparedSetups compared, ShotUnits units) {
        return Texts.of("shots.figure." + figure.id()) + (compared.computed().contains(figure) ? "*" : "") + ", "
                + units.of(figure).id();
    }

    private static String middle(ComparedSetups.Setup setup, ShotFigure figure, ShotUnits units) {
        return setup.middle(figure)
                .map(m -> units.number(figure, m.centre())
                        + (m.halfWidth().isPresent()
                                ? " ± " + units.half(figure, m.halfWidth().getAsDouble())
                                : ""))
                .orElse("–");
    }

    private static String change(ShotFigure figure, Estimate e, ShotUnits units) {
        return units.change(figure, e.difference()) + "  "
                + Texts.of("shots.interval", units.change(figure, e.low()), units.change(figure, e.high()));
    }

    /** Each state has a sign of its own, so that nothing is told by colour alone. */
    private static String mark(State state) {
        return switch (state) {
            case REAL -> "●";
            case NOT_SHOWN -> "○";
            case TOO_FEW -> "◌";
        };
    }

    private static List<TextGrid.Cell> row(String style, String... cells) {
        return Arrays.stream(cells).map(c -> TextGrid.Cell.of(c, style)).toList();
    }
}
