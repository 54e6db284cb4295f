package org.toeline.scene;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** Keeps frames of {@link RandomLessons} as pictures, so that a study can look at them again and again. */
public final class RandomPicture {

    private RandomPicture() {}

    /** FOLDER FROM TO FRAMES */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (int number = Integer.parseInt(arguments[1]); number < Integer.parseInt(arguments[2]); number++) {
            Scenario scenario = RandomLessons.lesson(number);
            for (View view : View.values()) {
                List<Frame> frames = RandomLessons.frames(
                        scenario, view, RandomLessons.look(number), Integer.parseInt(arguments[3]));
                for (Frame frame : frames) {
                    Path file = folder.resolve(number + "-" + view.id() + "-" + frame.index() + ".png");
                    ImageIO.write(frame.toImage(), "png", file.toFile());
                }
            }
        }
    }
}
