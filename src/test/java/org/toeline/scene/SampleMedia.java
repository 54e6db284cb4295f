package org.toeline.scene;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bytedeco.ffmpeg.global.avutil;
import org.toeline.mark.View;

/** Films the sample lessons: clips, each with its truth beside it. Arguments: the folder, then lesson ids. */
public final class SampleMedia {

    private static final long BITS_PER_SECOND = 4_300_000;

    private SampleMedia() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        avutil.av_log_set_level(avutil.AV_LOG_ERROR);
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "sample-media");
        List<Scenario> scenarios = new ArrayList<>();
        for (int i = 1; i < arguments.length; i++) {
            String id = arguments[i];
            scenarios.add(Scenarios.named(id)
                    .orElseThrow(() -> new IllegalArgumentException("there is no sample lesson “" + id + "”")));
        }
        film(folder, scenarios.isEmpty() ? Scenarios.all() : scenarios);
    }

    /** Films scenarios into a folder each, two clips at a time. */
    static void film(Path folder, List<Scenario> scenarios) throws IOException, InterruptedException {
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            for (Scenario scenario : scenarios) {
                Path own = Files.createDirectories(folder.resolve(scenario.id()));
                Stage stage = new Stage(scenario);
                List<Future<Path>> clips = new ArrayList<>();
                for (View view : View.values()) {
                    clips.add(two.submit(() -> film(own, scenario, stage, view)));
                }
                for (Future<Path> clip : clips) {
                    System.out.println(done(clip));
                }
            }
        } finally {
            two.shutdownNow();
        }
    }

    private static Path done(Future<Path> clip) throws IOException, InterruptedException {
        try {
            return clip.get();
        } catch (ExecutionException e) {
            throw new IOException("a clip could not be filmed", e.getCause());
        }
    }

    private static Path film(Path folder, Scenario scenario, Stage stage, View view) throws IOException {
        Path clip = folder.resolve(view.id() + ".mp4");
        new TruthDocument(scenario, view).write(folder.resolve(view.id() + ".truth.json"));
        Filming filming = new Filming(scenario, stage, view, Scenario.WIDTH, Scenario.HEIGHT);
        boolean tee = view == View.TEE;
        int frames = tee ? Motion.TEE_FRAMES : Motion.FRAMES;
        try (ClipWriter writer =
                new ClipWriter(clip, Scenario.WIDTH, Scenario.HEIGHT, Motion.FRAMES_PER_SECOND, BITS_PER_SECOND)) {
            for (int f = 0; f < frames; f++) {
                double time = tee ? Motion.addressS() : f / (double) Motion.FRAMES_PER_SECOND;
                writer.add(filming.frame(stage.moves(Motion.at(time)), f));
            }
        }
        return clip;
    }
}
