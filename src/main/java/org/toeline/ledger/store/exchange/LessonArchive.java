package org.toeline.ledger.store.exchange;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.ZipEntries;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.mark.View;

/**
 * A lesson with its clips and stills in one ZIP file: {@code lesson.lesson.json} as it is kept, {@code archive.json} with the
 * findings as stated and the clips' fingerprints, {@code clips/…} and {@code stills/…}. Written whole or not at all; what is read
 * is unpacked into a folder of its own, within limits that are counted while it streams.
 */
public final class LessonArchive {

    private static final Sentences SENTENCES = Sentences.of(LessonArchive.class);

    private static final long MOST_DOCUMENT_BYTES = 20L << 20;
    private static final long MOST_STILL_BYTES = 50L << 20;
    private static final long MOST_CLIP_BYTES = (4L << 30) - 1;
    /** No text or picture of ours packs better than this; what does is a bomb. */
    private static final int DENSEST = 200;

    private static final int BLOCK = 1 << 16;

    private LessonArchive() {}

    /**
     * What was unpacked.
     *
     * @param clips  the unpacked clips, each checked against its fingerprint
     * @param stills the unpacked stills
     */
    public record Contents(
            Lesson lesson,
            Optional<String> identity,
            List<StatedFinding> findings,
            Map<View, Path> clips,
            Map<View, Fingerprint> fingerprints,
            List<Path> stills) {

        public Contents {
            findings = List.copyOf(findings);
            clips = Map.copyOf(clips);
            fingerprints = Map.copyOf(fingerprints);
            stills = List.copyOf(stills);
        }
    }

    /**
     * Clips go into it without what says where they were filmed.
     *
     * @param clips files of the views' clips; may be fewer than the lesson names
     */
    public static void write(
            Lesson lesson,
            String identity,
            List<StatedFinding> findings,
            Map<View, Path> clips,
            List<Path> stills,
            Path file)
            throws DocumentException {
        try {
            Map<View, ArchiveIndex.Clip> index = index(clips);
            WholeFile.write(file, out -> {
                ZipOutputStream zip = new ZipOutputStream(out);
                put(zip, ArchiveDirectory.LESSON, LessonDocument.bytes(lesson));
                put(zip, ArchiveDirectory.INDEX, new ArchiveIndex(Optional.of(identity), index, findings).bytes());
                zip.setLevel(Deflater.NO_COMPRESSION);
                for (Map.Entry<View, ArchiveIndex.Clip> clip : index.entrySet()) {
                    zip.putNextEntry(entry(clip.getValue().entry()));
                    try (InputStream placeless = PlaceTags.without(Objects.requireNonNull(clips.get(clip.getKey())))) {
                        placeless.transferTo(zip);
                    }
                    zip.closeEntry();
                }
                for (int i = 0; i < stills.size(); i++) {
                    put(zip, "stills/still-" + (i + 1) + ".png", stills.get(i));
                }
                zip.finish();
            });
        } catch (IOException e) {
            throw new DocumentException(
                    SENTENCES.of("archive.not-written", file, e.getClass().getSimpleName() + ": " + e.getMessage()));
        }
    }

    private static Map<View, ArchiveIndex.Clip> index(Map<View, Path> clips) throws IOException, DocumentException {
        Map<View, ArchiveIndex.Clip> index = new EnumMap<>(View.class);
        for (Map.Entry<View, Path> clip : clips.entrySet()) {
            String name = clip.getValue().getFileName().toString();
            String ending = name.matches(".*\\.[A-Za-z0-9]{1,5}") ? name.substring(name.lastIndexOf('.')) : "";
            Fingerprint fingerprint;
            try (InputStream placeless = PlaceTags.without(clip.getValue())) {
                fingerprint = Fingerprint.of(placeless);
            }
            if (fingerprint.sizeBytes() > MOST_CLIP_BYTES) {
                throw new DocumentException(SENTENCES.of("archive.large", clip.getValue()));
            }
            index.put(
                    clip.getKey(),
                    new ArchiveIndex.Clip("clips/" + clip.getKey().id() + ending, fingerprint));
        }
        return index;
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(entry(name));
        zip.write(bytes);
        zip.closeEntry();
    }

    private static void put(ZipOutputStream zip, String name, Path file) throws IOException {
        zip.putNextEntry(entry(name));
        Files.copy(file, zip);
        zip.closeEntry();
    }

    /** Without the time of day, so that the same lesson makes the same archive. */
    private static ZipEntry entry(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(java.time.LocalDateTime.of(1980, 1, 1, 0, 0));
        return entry;
    }

    /**
     * Unpacks an archive into an empty folder, which the caller takes away again, whatever comes of it.
     *
     * @throws DocumentException one sentence, when anything in it is not as it must be
     */
    public static Contents unpack(Path archive, Path into) throws DocumentException {
        List<String> names = ArchiveDirectory.check(archive);
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            String name = archive.toString();
            for (String entry : names) {
                extract(zip, entry, into, name);
            }
            ArchiveIndex index = ArchiveIndex.parse(Files.readAllBytes(into.resolve(ArchiveDirectory.INDEX)), name);
            Lesson lesson = LessonDocument.parse(
                    Files.readAllBytes(into.resolve(ArchiveDirectory.LESSON)), name + ": " + ArchiveDirectory.LESSON);
            Map<View, Path> clips = new EnumMap<>(View.class);
            Map<View, Fingerprint> fingerprints = new EnumMap<>(View.class);
            for (Map.Entry<View, ArchiveIndex.Clip> clip : index.clips().entrySet()) {
                clips.put(clip.getKey(), checked(clip.getKey(), clip.getValue(), names, lesson, into, name));
                fingerprints.put(clip.getKey(), clip.getValue().fingerprint());
            }
            List<Path> stills = new ArrayList<>();
            names.stream().filter(n -> n.startsWith("stills/")).sorted().forEach(n -> stills.add(into.resolve(n)));
            return new Contents(lesson, index.identity(), index.findings(), clips, fingerprints, stills);
        } catch (IOException | IllegalArgumentException e) {
            throw new DocumentException(SENTENCES.of(
                    "archive.not-unpacked",
                    archive,
                    String.valueOf(e.getMessage()).lines().findFirst().orElse(SENTENCES.of("archive.damaged"))));
        }
    }

    private static Path checked(
            View view, ArchiveIndex.Clip clip, List<String> names, Lesson lesson, Path into, String name)
            throws IOException, DocumentException {
        if (!clip.entry().startsWith("clips/")
                || !names.contains(clip.entry())
                || !lesson.clips().containsKey(view)) {
            throw new DocumentException(
                    SENTENCES.of("archive.index", name, SENTENCES.of("archive.no-clip", clip.entry())));
        }
        Path file = into.resolve(clip.entry());
        if (!Fingerprint.of(file).equals(clip.fingerprint())) {
            throw new DocumentException(SENTENCES.of("archive.altered", name, clip.entry()));
        }
        return file;
    }

    private static void extract(ZipFile zip, String name, Path into, String archive)
            throws IOException, DocumentException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new DocumentException(SENTENCES.of("archive.lost", archive, name));
        }
        long most = name.startsWith("clips/")
                ? MOST_CLIP_BYTES
                : name.startsWith("stills/") ? MOST_STILL_BYTES : MOST_DOCUMENT_BYTES;
        long packed = Math.max(entry.getCompressedSize(), 1);
        Path target = into.resolve(name);
        Files.createDirectories(target.getParent());
        try (InputStream in = new BufferedInputStream(ZipEntries.open(zip, entry));
                OutputStream out = Files.newOutputStream(target)) {
            byte[] block = new byte[BLOCK];
            long written = 0;
            for (int n = in.read(block); n >= 0; n = in.read(block)) {
                written += n;
                if (written > most || written > (1 << 20) && written / packed > DENSEST) {
                    throw new DocumentException(SENTENCES.of("archive.dense", archive, name));
                }
                out.write(block, 0, n);
            }
        }
    }
}
