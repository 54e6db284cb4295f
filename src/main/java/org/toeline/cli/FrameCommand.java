package org.toeline.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Exactly the frame shown at a time. */
@Command(name = "frame", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class FrameCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CLIP")
    private Path clip;

    @Option(names = "--time", required = true, paramLabel = "S")
    private double time;

    @Option(names = "--out", required = true, paramLabel = "FILE.png")
    private Path out;

    @Override
    public Integer call() throws ClipException, DocumentException, IOException {
        if (!Double.isFinite(time)) {
            throw new picocli.CommandLine.ParameterException(
                    spec.commandLine(), Sentences.of(FrameCommand.class).of("frame.time", Double.toString(time)));
        }
        try (Clip opened = Clip.open(clip)) {
            Frame frame = opened.frameAt(time);
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(frame.toImage(), "png", png);
            OutFiles.write(out, png.toByteArray(), true);
            spec.commandLine().getOut().printf(Locale.ROOT, "%.6f%n", frame.seconds());
        }
        return Commands.DONE;
    }
}
