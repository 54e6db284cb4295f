package org.toeline.desk;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.Scene;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;

/** What a test shows, to be looked at by people: {@code target/screens/NAME.png} with {@code -Dtoeline.screens=true}. */
public final class ScreenPicture {

    private static final boolean WANTED = Boolean.getBoolean("toeline.screens");

    private ScreenPicture() {}

    public static void keep(FxRobot robot, Scene scene, String name) throws IOException {
        keep(robot, scene.getRoot(), name);
    }

    public static void keep(FxRobot robot, Node node, String name) throws IOException {
        if (!WANTED) {
            return;
        }
        BufferedImage[] image = new BufferedImage[1];
        robot.interact(() -> image[0] = SwingFXUtils.fromFXImage(node.snapshot(null, null), null));
        Path target = Files.createDirectories(Path.of("target", "screens")).resolve(name + ".png");
        ImageIO.write(image[0], "png", target.toFile());
    }
}
