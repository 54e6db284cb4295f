package org.toeline.video;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bytedeco.javacpp.Pointer;

/**
 * What memory the process holds over many openings: {@code OpeningMemory TIMES CLIP…} opens the clips together, looks at
 * frames all over them and closes them, and prints what the process holds while they are open and afterwards.
 */
public final class OpeningMemory {

    private static final int LOOKS = 12;

    private OpeningMemory() {}

    public static void main(String[] args) throws Exception {
        for (int time = 1; time <= Integer.parseInt(args[0]); time++) {
            List<Clip> clips = new ArrayList<>();
            for (int i = 1; i < args.length; i++) {
                clips.add(Clip.open(Path.of(args[i])));
            }
            for (int look = 0; look < LOOKS; look++) {
                for (Clip clip : clips) {
                    clip.frame((int) ((long) look * (clip.frameCount() - 1) / LOOKS));
                }
            }
            // a rest, in which frames around the last one are decoded
            Thread.sleep(1500);
            long open = Pointer.physicalBytes();
            clips.forEach(Clip::close);
            Runtime heap = Runtime.getRuntime();
            System.out.printf(
                    Locale.ROOT,
                    "%2d: open %4d MB, closed %4d MB, heap %4d of %4d MB%n",
                    time,
                    open >> 20,
                    Pointer.physicalBytes() >> 20,
                    heap.totalMemory() - heap.freeMemory() >> 20,
                    heap.totalMemory() >> 20);
        }
    }
}
