package org.toeline.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.assist.AddressFinder;
import org.toeline.assist.Progress;
import org.toeline.assist.StillSpan;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The moment of address. */
@Command(name = "address", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class,
        description = "Finds the moment of address: the player standing still before the swing.")
final class AddressCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "CLIP", description = "A clip.")
    private Path clip;
    @Option(names = "--json", description = "One JSON object on standard output: found, and time, from, to in seconds.")
    private boolean json;

    @Override
    public Integer call() throws ClipException {
        PrintWriter out = spec.commandLine().getOut();
        try (Clip opened = Clip.open(clip)) {
            Optional<StillSpan> span = AddressFinder.find(opened, Progress.NONE);
            if (json) {
                ObjectNode node = JsonNodeFactory.instance.objectNode().put("found", span.isPresent());
                span.ifPresent(s -> node.put("time", s.addressSeconds()).put("from", s.startSeconds())
                        .put("to", s.endSeconds()));
                out.println(node);
            } else {
                out.println(span.map(s -> String.format(Locale.ROOT,
                        "address at %.3f s; the player stands still from %.3f to %.3f s", s.addressSeconds(),
                        s.startSeconds(), s.endSeconds())).orElse("no swing in this clip, so no moment of address"));
            }
        }
        return Commands.DONE;
    }
}
