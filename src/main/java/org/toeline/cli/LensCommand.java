package org.toeline.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.toeline.camera.LensCalibration;
import org.toeline.camera.LensCalibration.Board;
import org.toeline.camera.LensCalibration.Calibrated;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LensBook;
import org.toeline.mark.LensNote;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The lens of a phone, from a clip of a chessboard; what it prints is the {@code lens} of a view in a lesson. */
@Command(name = "lens", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LensCommand implements Callable<Integer> {

    private static final int PICTURES = 40;
    /** A focal length less certain than this is no better than what is known of phones anyway. */
    private static final double USEFUL_SHARE = 0.05;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CLIP")
    private Path clip;

    @Option(names = "--columns", defaultValue = "9")
    private int columns;

    @Option(names = "--rows", defaultValue = "6")
    private int rows;

    @Option(names = "--square", defaultValue = "25")
    private double squareMm;

    @Option(names = "--name", paramLabel = "NAME")
    private Optional<String> name = Optional.empty();

    @Option(names = "--lenses", paramLabel = "FILE", defaultValue = "${sys:user.home}/Toeline/lenses.json")
    private Path lenses;

    @Override
    public Integer call() throws ClipException, DocumentException {
        Board board;
        try {
            board = new Board(columns, rows, squareMm / 1000);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage());
        }
        try (Clip opened = Clip.open(clip)) {
            LensCalibration calibration = new LensCalibration(
                    board, opened.info().width(), opened.info().height());
            int pictures = Math.min(PICTURES, opened.frameCount());
            for (int i = 0; i < pictures; i++) {
                calibration.add(grey(opened.frame((int) ((long) i * opened.frameCount() / pictures))));
            }
            Optional<Calibrated> found = calibration.lens();
            if (found.isEmpty()) {
                throw new ClipException(Sentences.of(LensCommand.class)
                        .of(
                                "lens.few",
                                clip,
                                columns,
                                rows,
                                calibration.views(),
                                pictures,
                                LensCalibration.LEAST_VIEWS));
            }
            print(found.get());
            if (name.isPresent()) {
                keep(name.get(), opened, found.get());
            }
            return Commands.DONE;
        }
    }

    private void keep(String as, Clip opened, Calibrated found) throws DocumentException {
        LensNote note = new LensNote(
                OptionalDouble.of(found.lens().focalPx()),
                OptionalDouble.of(found.focalSigmaPx()),
                OptionalDouble.of(found.lens().cxPx()),
                OptionalDouble.of(found.lens().cyPx()),
                OptionalDouble.of(found.lens().k1()),
                OptionalDouble.of(found.lens().k2()));
        String remark = new LensBook(lenses)
                .keep(new LensBook.Profile(
                        as, opened.info().width(), opened.info().height(), note));
        if (!remark.isEmpty()) {
            spec.commandLine().getErr().println(remark);
        }
        spec.commandLine().getErr().println(Sentences.of(LensCommand.class).of("lens.kept", as, lenses));
    }

    private void print(Calibrated found) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("focal", found.lens().focalPx()).put("focalSd", found.focalSigmaPx());
        node.put("cx", found.lens().cxPx()).put("cy", found.lens().cyPx());
        node.put("k1", found.lens().k1()).put("k2", found.lens().k2());
        spec.commandLine().getOut().println(node);
        spec.commandLine()
                .getErr()
                .println(Sentences.of(LensCommand.class)
                        .of(
                                found.focalSigmaPx()
                                                > USEFUL_SHARE * found.lens().focalPx()
                                        ? "lens.poor"
                                        : "lens.met",
                                found.views(),
                                found.rmsPx()));
    }

    private static byte[] grey(Frame frame) {
        byte[] grey = new byte[frame.width() * frame.height()];
        for (int i = 0; i < grey.length; i++) {
            int p = frame.argb()[i];
            grey[i] = (byte) Math.round(0.2126 * (p >> 16 & 255) + 0.7152 * (p >> 8 & 255) + 0.0722 * (p & 255));
        }
        return grey;
    }
}
