package org.toeline.study;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.toeline.assist.Movement;
import org.toeline.assist.OneMoment;
import org.toeline.assist.StillSpan;
import org.toeline.assist.Strike;
import org.toeline.video.SlowMotion;
import org.toeline.video.SoundTrack;

/**
 * How far off two clips are tied by the strike's sound and by what moves: {@code TieStudy PAIRS}. The sound is made (a strike with
 * its ring, noise, wind, voices of one or two people), written into clips as a phone does (AAC) and read back by the program; the
 * two phones stand 2.5 to 5 m away, so that the sound is late by up to 7 ms in one against the other. What moves is made too: the
 * curves of a swing seen from two sides, by cameras of 30 and 60 frames a second. Needs FFmpeg's program.
 */
public final class TieStudy {

    private static final int RATE = 44_100;
    private static final double LENGTH_S = 6;
    private static final double FRAME_S = 1 / 60.0;
    private static final double SOUND_M_PER_S = 343;

    /** What is heard beside the strike; levels against the strike's peak. */
    private record Surround(String name, double white, double wind, double voice, int speakers) {}

    private static final List<Surround> SURROUNDS = List.of(
            new Surround("quiet", 0.002, 0, 0, 0),
            new Surround("white noise, a twentieth of the strike", 0.05, 0, 0, 0),
            new Surround("white noise, a fifth", 0.2, 0, 0, 0),
            new Surround("white noise, half", 0.5, 0, 0, 0),
            new Surround("wind as loud as the strike", 0.005, 1, 0, 0),
            new Surround("a voice, a third", 0.01, 0, 0.33, 1),
            new Surround("two voices, as loud", 0.01, 0, 1, 2),
            new Surround("two voices, half, noise, a tenth", 0.1, 0, 0.5, 2),
            new Surround("no strike, two voices", 0.01, 0, 1, -2));

    private final Random lot = new Random(17);
    private final Path folder;

    private TieStudy(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws Exception {
        int pairs = Integer.parseInt(args[0]);
        TieStudy study = new TieStudy(Files.createTempDirectory("ties"));
        System.out.println(
                "| | pairs | tied | off by, ms: median | 95 % | within a frame of 60 | wrong | said to be uncertain |");
        System.out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        for (double noise : new double[] {0.1, 0.5, 1.5}) {
            List<Double> errors = new ArrayList<>();
            int curves = 10 * pairs;
            for (int i = 0; i < curves; i++) {
                study.seen(noise).ifPresent(errors::add);
            }
            row(String.format(Locale.ROOT, "motion: noise of %.1f %% of the most", 5 * noise), curves, errors);
        }
        for (Surround surround : SURROUNDS) {
            List<Double> errors = new ArrayList<>();
            for (int i = 0; i < pairs; i++) {
                study.heard(surround).ifPresent(errors::add);
            }
            row("sound: " + surround.name(), pairs, errors);
        }
    }

    /** @param errors seconds, of those that were tied; more than two frames of 60 off is wrong */
    private static void row(String name, int pairs, List<Double> errors) {
        double[] off =
                errors.stream().mapToDouble(e -> 1000 * Math.abs(e)).sorted().toArray();
        long within = Arrays.stream(off).filter(e -> e <= 1000 * FRAME_S).count();
        long wrong = Arrays.stream(off).filter(e -> e > 2000 * FRAME_S).count();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %s | %s | %d | %d | %.0f %% |%n",
                name,
                pairs,
                off.length,
                off.length == 0 ? "" : String.format(Locale.ROOT, "%.1f", off[off.length / 2]),
                off.length == 0 ? "" : String.format(Locale.ROOT, "%.1f", off[(int) (0.95 * (off.length - 1))]),
                within,
                wrong,
                100.0 * (pairs - off.length) / pairs);
    }

    private Optional<Double> heard(Surround surround) throws Exception {
        double first = 2.5 + lot.nextDouble();
        double second = 2.5 + lot.nextDouble();
        double firstMost = first + 0.03 * lot.nextGaussian();
        double secondMost = second + 0.03 * lot.nextGaussian();
        Optional<Strike> one = heard(surround, first, firstMost);
        Optional<Strike> other = one.isEmpty() ? Optional.empty() : heard(surround, second, secondMost);
        return other.flatMap(o -> OneMoment.heard(one.orElseThrow(), firstMost, o, secondMost))
                .map(m -> m.secondSeconds() - m.firstSeconds() - (second - first));
    }

    private Optional<Strike> heard(Surround surround, double strikeS, double mostS) throws Exception {
        Path clip = clip(sound(surround, strikeS + (2.5 + 2.5 * lot.nextDouble()) / SOUND_M_PER_S));
        Optional<Strike> heard = SoundTrack.of(clip).flatMap(sound -> Strike.heard(sound, mostS));
        Files.delete(clip);
        return heard;
    }

    private double[] sound(Surround s, double strikeS) {
        double[] all = new double[(int) (LENGTH_S * RATE)];
        double wind = 0;
        for (int i = 0; i < all.length; i++) {
            // a walk that is drawn back to the middle: mostly below 50 Hz, as wind on a microphone
            wind = 0.995 * wind + 0.1 * lot.nextGaussian();
            all[i] = 0.35 * s.white() * lot.nextGaussian() + 0.5 * s.wind() * wind;
        }
        for (int v = 0; v < Math.abs(s.speakers()); v++) {
            speak(all, s.voice());
        }
        if (s.speakers() >= 0) {
            strike(all, strikeS);
        }
        return all;
    }

    /** A crack of a few milliseconds over all frequencies, and the ring of the club's head. */
    private void strike(double[] all, double atS) {
        double ringHz = 2500 + 2500 * lot.nextDouble();
        int at = (int) (atS * RATE);
        for (int i = 0; i < RATE / 10 && at + i < all.length; i++) {
            double t = (double) i / RATE;
            all[at + i] += 0.6 * Math.exp(-t / 0.003) * lot.nextGaussian()
                    + 0.4 * Math.exp(-t / 0.02) * Math.sin(2 * Math.PI * ringHz * t);
        }
    }

    /** Syllables: a burst, then a voiced sound of some partials that swells and fades, and rests between. */
    private void speak(double[] all, double loud) {
        double hz = 100 + 120 * lot.nextDouble();
        double t = 0.3 * lot.nextDouble();
        while (t < LENGTH_S - 0.4) {
            double length = 0.1 + 0.18 * lot.nextDouble();
            int at = (int) (t * RATE);
            int count = (int) (length * RATE);
            double burst = lot.nextInt(3) == 0 ? 0.5 * lot.nextDouble() : 0;
            double formant = 400 + 1600 * lot.nextDouble();
            for (int i = 0; i < count; i++) {
                double s = (double) i / RATE;
                double voiced = 0;
                for (int k = 1; k <= 20; k++) {
                    double off = (k * hz - formant) / 350;
                    voiced += Math.sin(2 * Math.PI * k * hz * s) * (0.05 + Math.exp(-off * off)) / 2.5;
                }
                double swell = Math.sin(Math.PI * i / count);
                all[at + i] += loud * (swell * voiced + burst * Math.exp(-s / 0.008) * lot.nextGaussian());
            }
            t += length + (lot.nextInt(5) == 0 ? 0.4 : 0.05) * lot.nextDouble();
        }
    }

    private Path clip(double[] sound) throws Exception {
        byte[] bytes = new byte[2 * sound.length];
        for (int i = 0; i < sound.length; i++) {
            int v = (int) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, 16_000 * sound[i]));
            bytes[2 * i] = (byte) v;
            bytes[2 * i + 1] = (byte) (v >> 8);
        }
        Path wav = folder.resolve("sound.wav");
        AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(bytes), format, sound.length),
                AudioFileFormat.Type.WAVE,
                wav.toFile());
        Path clip = folder.resolve("clip.mp4");
        Process making = new ProcessBuilder(
                        "ffmpeg",
                        "-v",
                        "error",
                        "-y",
                        "-f",
                        "lavfi",
                        "-i",
                        "color=s=64x64:r=30:d=" + LENGTH_S,
                        "-i",
                        wav.toString(),
                        "-c:v",
                        "mpeg4",
                        "-c:a",
                        "aac",
                        "-b:a",
                        "96k",
                        clip.toString())
                .inheritIO()
                .start();
        if (making.waitFor() != 0) {
            throw new IllegalStateException("FFmpeg made no clip");
        }
        return clip;
    }

    private Optional<Double> seen(double noise) {
        double first = 2.5 + lot.nextDouble();
        double second = 2.5 + lot.nextDouble();
        double tempo = 0.8 + 0.5 * lot.nextDouble();
        Movement one = movement(first, tempo, 0.7 + 0.8 * lot.nextDouble(), lot.nextBoolean() ? 30 : 60, noise);
        Movement other = movement(second, tempo, 0.7 + 0.8 * lot.nextDouble(), lot.nextBoolean() ? 30 : 59, noise);
        return OneMoment.seen(one, SlowMotion.NONE, other, SlowMotion.NONE)
                .map(m -> m.secondSeconds() - m.firstSeconds() - (second - first));
    }

    /** A swing's motion: slowly up, a pause, fast down, slowly out; seen from two sides with other shares. */
    private Movement movement(double atS, double tempo, double share, double rate, double noise) {
        List<Movement.Amount> amounts = new ArrayList<>();
        for (double t = lot.nextDouble() / rate; t < LENGTH_S; t += 1 / rate) {
            double r = (t - atS) / tempo;
            double up = 6 * bell(r + 0.75, 0.22) * share;
            double down = 20 * bell(r, 0.07);
            double out = 5 * bell(r - 0.35, 0.2) / share;
            amounts.add(new Movement.Amount(t, Math.max(0, up + down + out + noise * lot.nextGaussian())));
        }
        StillSpan still = new StillSpan(atS - 2.2 * tempo, atS - 1.15 * tempo, atS - 1.4 * tempo);
        return new Movement(amounts, List.of(), List.of(still));
    }

    private static double bell(double x, double sigma) {
        return Math.exp(-x * x / (2 * sigma * sigma));
    }
}
