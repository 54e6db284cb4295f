package org.toeline.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.assist.AddressFinder;
import org.toeline.assist.StillSpan;
import org.toeline.language.Sentences;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Progress;
import org.toeline.video.SlowMotion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The moment of address. */
@Command(name = "address", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class AddressCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CLIP")
    private Path clip;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--filmed-at", paramLabel = "N")
    private Optional<Double> filmedAt = Optional.empty();

    @Override
    public Integer call() throws ClipException {
        if (filmedAt.isPresent() && !SlowMotion.possible(filmedAt.get())) {
            throw new ParameterException(
                    spec.commandLine(), Sentences.of(AddressCommand.class).of("address.filmed-at", filmedAt.get()));
        }
        PrintWriter out = spec.commandLine().getOut();
        try (Clip opened = Clip.open(clip)) {
            SlowMotion filmed = filmedAt.isPresent() ? opened.capturedAt(filmedAt.get()) : opened.slowMotion();
            List<StillSpan> moments = AddressFinder.moments(opened, filmed, Progress.NONE);
            if (json) {
                out.println(object(moments));
            } else if (moments.isEmpty()) {
                out.println(Sentences.of(AddressCommand.class).of("address.none"));
            } else {
                moments.forEach(s -> out.println(Sentences.of(AddressCommand.class)
                        .of("address.at", s.addressSeconds(), s.startSeconds(), s.endSeconds(), s.confidence())));
            }
        }
        return Commands.DONE;
    }

    /** The clearest moment at the top, and all in order of time. */
    private static ObjectNode object(List<StillSpan> moments) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("found", !moments.isEmpty());
        moments.stream().max(Comparator.comparingDouble(StillSpan::confidence)).ifPresent(best -> put(node, best));
        ArrayNode all = node.putArray("moments");
        moments.forEach(s -> put(all.addObject(), s));
        return node;
    }

    private static void put(ObjectNode node, StillSpan span) {
        node.put("time", span.addressSeconds())
                .put("from", span.startSeconds())
                .put("to", span.endSeconds())
                .put("confidence", span.confidence());
    }
}
