package org.toeline.desk.shots;

import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.desk.text.TypedNumber;
import org.toeline.flight.Air;
import org.toeline.flight.FigureUnit;
import org.toeline.language.Written;

/** The air the flights are computed for. What is typed counts at once; what makes no air is said beside it. */
final class AirBar extends FlowPane {

    private static final double PA_IN_HPA = 100;

    private final Consumer<Conditions> changed;
    private final TextField temperature = field("temperature");
    private final ComboBox<Conditions.From> from = new ComboBox<>();
    private final TextField height = field("height");
    private final TextField humidity = field("humidity");
    private final TextField behind = field("behind");
    private final TextField fromLeft = field("from-left");
    private final Label fault = new Label();
    private final Label windUnit = new Label();
    private FigureUnit speed = FigureUnit.METRES_PER_SECOND;
    private boolean filling;

    AirBar(Consumer<Conditions> changed) {
        super(8, 4);
        this.changed = changed;
        from.getItems().setAll(Conditions.From.values());
        from.setConverter(new ShownAs<>(f -> Texts.of("shots.air." + f.id())));
        from.setId("air-from");
        from.setAccessibleText(Texts.of("shots.air.from"));
        from.setOnAction(e -> {
            if (!filling) {
                height.setText(
                        from.getValue() == Conditions.From.ALTITUDE ? "0" : number(Air.SEA_LEVEL_PA / PA_IN_HPA));
            }
        });
        fault.setId("air-fault");
        fault.getStyleClass().add("doubt");
        getChildren()
                .addAll(
                        new Label(Texts.of("shots.air")),
                        named(temperature, "temperature"),
                        new HBox(4, from, height),
                        named(humidity, "humidity"),
                        named(behind, "behind"),
                        named(fromLeft, "from-left"),
                        windUnit,
                        fault);
        getChildren().forEach(c -> {
            if (c instanceof Label label) {
                label.setMinHeight(Look.px(30));
            }
        });
    }

    private TextField field(String id) {
        TextField field = new TextField();
        field.setId("air-" + id);
        field.setPrefColumnCount(4);
        field.setAccessibleText(Texts.of("shots.air." + id));
        field.textProperty().addListener((o, a, b) -> read());
        return field;
    }

    private static HBox named(TextField field, String id) {
        Label label = new Label(Texts.of("shots.air." + id));
        label.setLabelFor(field);
        HBox both = new HBox(4, label, field);
        both.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return both;
    }

    private void read() {
        if (filling) {
            return;
        }
        try {
            Conditions typed = new Conditions(
                    value(temperature),
                    from.getValue(),
                    value(height),
                    value(humidity),
                    speed.toInside(value(behind)),
                    speed.toInside(value(fromLeft)));
            fault.setText("");
            changed.accept(typed);
        } catch (NumberFormatException e) {
            fault.setText("✕ " + Texts.of("shots.air.no-number"));
        } catch (IllegalArgumentException e) {
            fault.setText("✕ " + e.getMessage());
        }
    }

    private static double value(TextField field) {
        return field.getText().isBlank()
                ? 0
                : TypedNumber.read(field.getText()).orElseThrow(NumberFormatException::new);
    }

    private static String number(double value) {
        return Written.number("%.2f", value).replaceFirst("[.,]?0+$", "");
    }

    void show(ShotSettings settings) {
        filling = true;
        Conditions air = settings.conditions();
        speed = settings.units().speed();
        temperature.setText(number(air.temperatureC()));
        from.setValue(air.from());
        height.setText(number(air.height()));
        humidity.setText(number(air.humidityPercent()));
        behind.setText(number(speed.fromInside(air.behindMps())));
        fromLeft.setText(number(speed.fromInside(air.fromLeftMps())));
        windUnit.setText(speed.id());
        fault.setText("");
        filling = false;
    }
}
