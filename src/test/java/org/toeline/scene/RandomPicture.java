package org.toeline.scene;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** Keeps frames of {@link RandomLessons} as pictures, so that a study can look at them again and again. */
public final class RandomPicture {

    private RandomPicture() {}

    /** FOLDER FROM TO FRAMES [VIEW…]: all three views if none is named. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (int number = Integer.parseInt(arguments[1]); number < Integer.parseInt(arguments[2]); number++) {
            Scenario scenario = RandomLessons.lesson(number);
            for (View view : views(arguments)) {
                List<Frame> frames = RandomLessons.frames(
                        scenario, view, RandomLessons.look(number), Integer.parseInt(arguments[3]));
                for (Frame frame : frames) {
                    Path file = folder.resolve(number + "-" + view.id() + "-" + frame.index() + ".png");
                    ImageIO.write(frame.toImage(), "png", file.toFile());
                }
            }
        }
    }

    private static List<View> views(String[] arguments) {
        List<View> named = Stream.of(arguments)
                .skip(4)
                .map(id -> View.of(id).orElseThrow())
                .toList();
        return named.isEmpty() ? List.of(View.values()) : named;
    }
}
