package org.toeline.desk.sheet;

import javafx.scene.control.Button;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.picture.PicturePane.Light;
import org.toeline.desk.text.Texts;

/** In which light the picture is shown, as long as that is not the one it was filmed in; pressed, it is that again. */
final class ShownLight extends Button {

    private final PicturePane picture;
    private Light light = Light.AS_FILMED;

    ShownLight(PicturePane picture) {
        this.picture = picture;
        setId("light");
        setFocusTraversable(false);
        getStyleClass().add("over-picture");
        setOnAction(e -> asFilmed());
        show(light);
    }

    void add(double brighter, double moreContrast) {
        show(light.plus(brighter, moreContrast));
    }

    void asFilmed() {
        show(Light.AS_FILMED);
    }

    private void show(Light changed) {
        light = changed;
        picture.light(light);
        setVisible(!light.equals(Light.AS_FILMED));
        setText(Texts.of("light", percent(light.brightness()), percent(light.contrast())));
    }

    private static String percent(double light) {
        return (light > 0 ? "+" : light < 0 ? "\u2212" : "") + Math.round(100 * Math.abs(light));
    }
}
