package org.toeline.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.toeline.language.Sentences;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.ClipInfo;
import org.toeline.video.SlowMotion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a clip is. */
@Command(name = "clip", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class ClipCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CLIP")
    private Path clip;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--times")
    private boolean times;

    @Override
    public Integer call() throws ClipException {
        PrintWriter out = spec.commandLine().getOut();
        try (Clip opened = Clip.open(clip)) {
            ClipInfo info = opened.info();
            if (json) {
                out.println(object(opened, info));
            } else {
                out.println(Sentences.of(ClipCommand.class)
                        .of(
                                "clip.is",
                                info.width(),
                                info.height(),
                                info.rotation(),
                                info.frames(),
                                info.startSeconds(),
                                info.durationSeconds()));
                out.println(info.codec());
                opened.captureRate().ifPresent(rate -> {
                    SlowMotion slow = opened.slowMotion();
                    out.println(Sentences.of(ClipCommand.class)
                            .of(
                                    slow.factor() == 1 ? "clip.real-time" : "clip.slowed",
                                    rate,
                                    slow.factor(),
                                    slow.realSeconds(info.durationSeconds())));
                });
                info.remarks()
                        .forEach(remark ->
                                out.println(Sentences.of(ClipCommand.class).of("clip.note", remark)));
                for (int i = 0; times && i < opened.frameCount(); i++) {
                    out.printf(Locale.ROOT, "%.6f%n", opened.seconds(i));
                }
            }
        }
        return Commands.DONE;
    }

    private ObjectNode object(Clip opened, ClipInfo info) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("width", info.width()).put("height", info.height()).put("rotation", info.rotation());
        node.put("frames", info.frames()).put("start", info.startSeconds()).put("duration", info.durationSeconds());
        node.put("codec", info.codec()).put("mirrored", info.mirrored());
        opened.captureRate().ifPresent(rate -> node.put("captureRate", rate));
        node.put("slowedDown", opened.slowMotion().factor());
        info.remarks().forEach(node.putArray("notes")::add);
        if (times) {
            ArrayNode all = node.putArray("times");
            for (int i = 0; i < opened.frameCount(); i++) {
                all.add(opened.seconds(i));
            }
        }
        return node;
    }
}
