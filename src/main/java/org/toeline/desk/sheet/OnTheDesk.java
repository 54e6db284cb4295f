package org.toeline.desk.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.prefs.Preferences;
import org.toeline.across.StatedFindings;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.Records;
import org.toeline.desk.screen.LessonDesk;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.ledger.BesideDocument;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Stature;

/** Which lesson comes onto the desk: one of the ledger, a document, a new one, or the sample. */
public final class OnTheDesk implements LessonDesk {

    /** So many bytes tell how a document begins. */
    private static final int PEEK = 64;

    private final LessonModel model;
    private final Records records;
    private final Background background;
    private final Path folder;
    private final Consumer<String> say;
    private final Runnable leaving;
    private final BiConsumer<Lesson, Optional<Path>> take;
    private final Preferences left = Preferences.userRoot().node("/org/toeline/desk");

    /**
     * @param folder  where documents that have no place of their own are kept
     * @param leaving keeps what is to be kept of the lesson that leaves the desk
     * @param take    puts a lesson onto the sheet, with the document it has
     */
    public OnTheDesk(
            LessonModel model,
            Records records,
            Background background,
            Path folder,
            Consumer<String> say,
            Runnable leaving,
            BiConsumer<Lesson, Optional<Path>> take) {
        this.model = model;
        this.records = records;
        this.background = background;
        this.folder = folder;
        this.say = say;
        this.leaving = leaving;
        this.take = take;
    }

    /** Whether a file is a lesson's: by its name a document or an archive, or by its first letter a document of any name. */
    static boolean isLesson(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".json") || LessonImport.isArchive(file) || beginsAsDocument(file);
    }

    private static boolean beginsAsDocument(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(PEEK), StandardCharsets.UTF_8)
                    .strip()
                    .startsWith("{");
        } catch (IOException e) {
            // who opens it says what is wrong with it
            return false;
        }
    }

    @Override
    public void open(Path file) {
        if (LessonImport.isArchive(file)) {
            records.ask(
                    l -> new LessonImport(l, records.settings().folder(), StatedFindings::of)
                            .take(file, Optional.empty())
                            .lessonId(),
                    this::open);
        } else {
            openDocument(file);
        }
    }

    private void openDocument(Path document) {
        background.run(() -> BesideDocument.absolute(LessonDocument.read(document), document), lesson -> {
            leaving.run();
            records.fresh(OptionalInt.empty());
            take.accept(lesson, Optional.of(document));
            records.keep(lesson);
        });
    }

    @Override
    public void open(int lessonId) {
        records.ask(l -> l.lesson(lessonId), kept -> {
            if (kept.isPresent()) {
                open(kept.get());
            } else {
                say.accept(Texts.of("lesson.gone"));
            }
        });
    }

    private void open(KeptLesson kept) {
        leaving.run();
        records.opened(kept);
        take.accept(kept.lesson(), Optional.empty());
    }

    @Override
    public void fresh() {
        fresh(
                OptionalInt.empty(),
                MarkSheet.empty(Handedness.RIGHT, model.sheet().club()));
    }

    @Override
    public void fresh(Player player) {
        MarkSheet sheet =
                MarkSheet.empty(player.details().handedness(), model.sheet().club());
        fresh(
                OptionalInt.of(player.id()),
                player.details().heightM().isPresent()
                        ? sheet.withStature(Optional.of(
                                Stature.told(player.details().heightM().getAsDouble())))
                        : sheet);
    }

    private void fresh(OptionalInt player, MarkSheet sheet) {
        fresh(player, sheet, l -> l);
    }

    private void fresh(OptionalInt player, MarkSheet sheet, UnaryOperator<Lesson> more) {
        leaving.run();
        double own = left.getDouble("clickSigmaPx", MarkSheet.USUAL_CLICK_SIGMA_PX);
        records.fresh(player);
        Lesson lesson = Lesson.of(sheet.withClickSigmaPx(own));
        take.accept(
                more.apply(lesson.withRecorded(OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS))),
                Optional.empty());
    }

    @Override
    public void sameSetup(int lessonId) {
        if (records.lessonId().equals(OptionalInt.of(lessonId))) {
            sameSetup();
        } else {
            records.ask(
                    l -> withSetup(l, lessonId),
                    kept -> kept.ifPresentOrElse(
                            k -> sameSetup(k.lesson(), k.playerId()), () -> say.accept(Texts.of("lesson.gone"))));
        }
    }

    /** The setup of the lesson on the desk, addressed once more. */
    public void sameSetup() {
        if (records.lessonId().isEmpty() || records.playerId().isEmpty()) {
            say.accept(Texts.of("setup.nothing-yet"));
            return;
        }
        if (model.lesson().setup().isEmpty()) {
            model.describe(l -> l.withSetup(freshSetup()));
        }
        sameSetup(model.lesson(), records.playerId().getAsInt());
    }

    private static String freshSetup() {
        return UUID.randomUUID().toString();
    }

    /** A lesson of the ledger, which says of which setup it is. */
    private static Optional<KeptLesson> withSetup(Ledger ledger, int id) throws LedgerException {
        Optional<KeptLesson> kept = ledger.lesson(id);
        if (kept.filter(k -> k.lesson().setup().isEmpty()).isPresent()) {
            KeptLesson k = kept.get();
            Lesson named = k.lesson().withSetup(freshSetup());
            if (ledger.save(id, k.version(), named, k.findings()) instanceof Saved.Conflict beside) {
                // another bay was quicker: what it made of the lesson stands, and gets the name
                ledger.dropAside(beside.asideId());
                return withSetup(ledger, id);
            }
            return ledger.lesson(id);
        }
        return kept;
    }

    private void sameSetup(Lesson before, int player) {
        MarkSheet sheet = before.sheet();
        fresh(
                OptionalInt.of(player),
                MarkSheet.empty(sheet.handedness(), sheet.club()).withStature(sheet.stature()),
                l -> l.withSetup(before.setup())
                        .withPlace(before.place())
                        .withSheet(l.sheet().withFloor(sheet.floor())));
        say.accept(Texts.of("setup.once-more"));
    }

    /** The sample lessons as the coach's own: what is tried on them stays out of the program's folder. */
    public void sample() {
        SampleLessons sample = new SampleLessons(
                Path.of(Optional.ofNullable(System.getProperty("toeline.home")).orElse("."), "sample-media")
                        .toAbsolutePath());
        if (!sample.areThere()) {
            say.accept(Texts.of("sample.missing"));
        } else if (!records.failed()) {
            records.ask(sample::takeIn, this::open);
        } else {
            background.run(
                    sample::before, lesson -> take.accept(lesson, Optional.of(folder.resolve("sample.lesson.json"))));
        }
    }

    /** The lesson that was kept last, when there is one. */
    public void latest(Consumer<LessonLine> then) {
        records.ask(
                l -> l.find(Search.RECENT.withMost(1)),
                lines -> lines.stream().findFirst().ifPresent(then));
    }
}
