package org.toeline.desk.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.prefs.Preferences;
import java.util.stream.Collectors;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.scene.Parent;
import javafx.scene.image.Image;
import javafx.scene.image.WritableImage;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Assessment;
import org.toeline.advice.CameraMove;
import org.toeline.advice.CameraStand;
import org.toeline.advice.CameraWords;
import org.toeline.advice.Gate;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Slip;
import org.toeline.desk.bodymap.MarkingPane;
import org.toeline.desk.film.Films;
import org.toeline.desk.film.Player;
import org.toeline.desk.keys.Act;
import org.toeline.desk.keys.KeyBook;
import org.toeline.desk.lesson.ClickSpread;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.OwnCorrections;
import org.toeline.desk.records.OwnRanges;
import org.toeline.desk.records.Records;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.Report;
import org.toeline.document.OwnDocument;
import org.toeline.language.Written;
import org.toeline.ledger.LensBook;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Doubt;
import org.toeline.video.KeptIndexes;

/** The sheet of one lesson: joins the model, the clips, the findings and the parts of the window. */
public final class Sheet implements LessonListener, Screen, MarkingPane.Helps {

    private final LessonModel model =
            new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, org.toeline.mark.Club.DRIVER)));
    private final SheetView view;
    private final SheetActs acts;
    private final Background background;
    private final Background.Lane assessing;
    private final ClipDrawer clips;
    private final Films films;
    private final TieFinder ties;
    private final MissingOnSheet missing;
    private final FrameKeeper frames;
    private final Assistant assistant;
    /** Names this screen. */
    public static final String ID = "lesson";

    private final Preferences left = Preferences.userRoot().node("/org/toeline/desk");
    private final KeyBook keys = new KeyBook(left);
    private final Path folder;
    private final Records records;
    private final OwnRanges ranges;
    private final Report report;
    private final Consumer<String> go;
    private final OnTheDesk desk;
    private final Keeper keeper;
    private Optional<Assessment> assessment = Optional.empty();
    private MarkSheet assessed = model.sheet();
    private Runnable whenAssessed = () -> {};
    /** Longer than findings of other marks may stand there. */
    private final PauseTransition late = new PauseTransition(Duration.millis(700));

    /**
     * @param folder     where documents that have no place of their own are kept
     * @param report     takes one sentence for the line at the bottom of the window
     * @param go         to another screen, by its id
     */
    public Sheet(
            Path folder,
            Records records,
            OwnRanges ranges,
            OwnCorrections corrections,
            Background background,
            Report report,
            Consumer<String> go) {
        this.folder = folder;
        this.records = records;
        this.ranges = ranges;
        ranges.listen(this::assess);
        this.background = background;
        this.report = report;
        this.go = go;
        this.assessing = background.lane();
        this.missing = new MissingOnSheet(model, records, background, this::say, this::shown, this::updated);
        this.clips = new ClipDrawer(
                model, background, new Shown(), this::say, missing, KeptIndexes.in(folder.resolve("lists-of-frames")));
        this.films = new Films(
                model::large,
                clips::reel,
                new Played(),
                () -> keys.key(Act.ONE_MOMENT).getDisplayText(),
                this::say);
        this.ties = new TieFinder(clips, films, background);
        this.frames = new FrameKeeper(model, records, background, clips);
        this.assistant = new Assistant(model, background, clips, corrections, this::words, this::say);
        this.view = new SheetView(model, this, new FrameChange(model, background, clips, this::words, this::say));
        late.setOnFinished(e -> view.reckoning());
        this.acts = new SheetActs(this, view);
        this.desk = new OnTheDesk(model, records, background, folder, report, frames::keep, this::take);
        model.listen(this);
        this.keeper = new Keeper(model, records, background, folder, report);
        model.listen(keeper);
        model.listen(new ClipNotes(model, records, background));
        model.listen(frames);
        records.listen(() -> {
            if (records.failed()) {
                keeper.settled();
            }
        });
        view.update();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Parent root() {
        return view;
    }

    @Override
    public void entered() {
        view.update();
    }

    public LessonModel model() {
        return model;
    }

    public MissingOnSheet missing() {
        return missing;
    }

    private void updated() {
        view.update();
    }

    public ClipDrawer clips() {
        return clips;
    }

    /** The latest there is, for what is painted beside the marks; while a mark is dragged it is a pulse or two behind. */
    public Optional<Assessment> assessment() {
        return assessment;
    }

    /** The findings of what is marked now; none while they are being reckoned. */
    public Optional<Assessment> findings() {
        return assessment.filter(a -> a.sheet().equals(model.sheet()));
    }

    /** @param done whenever there are new findings */
    public void assessed(Runnable done) {
        whenAssessed = done;
    }

    public org.toeline.advice.Words words() {
        return view.words();
    }

    /** The lenses that were calibrated; none, said so, when they cannot be read. */
    public List<LensBook.Profile> lenses() {
        OwnDocument.Read<List<LensBook.Profile>> read = new LensBook(folder.resolve("lenses.json")).profiles();
        if (!read.remark().isEmpty()) {
            say(read.remark());
        }
        return read.value();
    }

    /** Where a view's camera stands and which move would tell more, in words, on the interface thread. */
    public void camera(View shown, Consumer<String> then) {
        CameraWords words = new CameraWords(view.words());
        Optional<Assessment> now = assessment;
        if (now.flatMap(a -> a.advice().withheld()).isPresent()) {
            then.accept(Texts.of("badge.withheld"));
            return;
        }
        background.run(
                () -> now.flatMap(a -> CameraStand.of(a.posture(), shown)
                                .map(stand -> words.stand(stand) + " " + words.move(shown, CameraMove.best(a, shown))))
                        .orElse(Texts.of("camera.unmarked")),
                then);
    }

    public Background background() {
        return background;
    }

    public void say(String sentence) {
        report.accept(sentence);
    }

    /** The first thing a new user sees: the sample lesson, one click away. */
    public void welcome() {
        view.welcome(true);
        desk.latest(view::goOn);
    }

    /** The welcome gives way to the sheet. */
    public void welcomed() {
        view.welcome(false);
    }

    /** Puts another lesson on the sheet. */
    private void take(Lesson lesson, Optional<Path> from) {
        // what was said was of the lesson that leaves
        say("");
        assistant.learning().leave();
        view.welcome(false);
        films.forget();
        ties.forget();
        view.clear();
        model.open(lesson, from);
        clips.openAll();
        assess();
        go.accept(id());
    }

    public OnTheDesk desk() {
        return desk;
    }

    /** Opens a file that is a lesson's, or else a clip of the large view. */
    public void open(Path file) {
        if (OnTheDesk.isLesson(file)) {
            desk.open(file);
        } else {
            go.accept(id());
            view.arrived(List.of(file), model.large());
        }
    }

    private void shown(View of, @Nullable WritableImage image) {
        view.picture(of, image);
        frames.changed();
        assistant.drafts().next();
    }

    Arrivals arrivals() {
        return new Arrivals(this, view.whichIsWhich());
    }

    /** The films of the lesson, looked through. */
    public Films films() {
        return films;
    }

    /** Where the clips' pictures go. */
    private final class Shown implements LookedClips.Pictures {

        @Override
        public void show(View of, @Nullable WritableImage image) {
            shown(of, image);
        }

        @Override
        public void pass(View of, Image small, int widthPx, int heightPx) {
            view.pass(of, small, widthPx, heightPx);
        }

        @Override
        public void lookedThrough(View of) {
            ties.lookedThrough();
            view.lookedThrough(of);
            assistant.drafts().lookedThrough(of);
        }
    }

    /** What is seen of playing. */
    private final class Played implements Player.Listener {

        @Override
        public void moved() {
            view.moved();
        }

        @Override
        public void changed() {
            view.update();
        }
    }

    public void handOver() {
        go.accept("hand-over");
    }

    public Assistant assistant() {
        return assistant;
    }

    @Override
    public void suggest() {
        assistant.suggest();
    }

    @Override
    public void steady() {
        assistant.steady();
    }

    @Override
    public void pin() {
        pin(Optional.empty());
    }

    @Override
    public boolean aims() {
        return view.aim().isShown();
    }

    void pin(Optional<PinnedWords> elsewhere) {
        view.pin(elsewhere);
    }

    /** Marks the large view again, or ends that and takes the coach's own click spread from it. */
    @Override
    public void again() {
        if (!model.repeating()) {
            if (model.marks(model.large())
                    .filter(v -> ClickSpread.learnsFrom(v, model.sheet().clickSigmaPx()))
                    .isEmpty()) {
                say(Texts.of("again.few", ClickSpread.LEAST));
                return;
            }
            boolean begun = model.canGoOnRepeating();
            model.repeat();
            say(Texts.of(begun ? "again.gone-on" : "again.begun"));
            return;
        }
        OptionalDouble spread = model.endRepeat();
        if (spread.isEmpty()) {
            say(Texts.of("again.too-few", ClickSpread.LEAST));
            return;
        }
        left.putDouble("clickSigmaPx", spread.getAsDouble());
        model.apply(ClickSpread.applied(model.sheet(), spread.getAsDouble()));
        say(Texts.of("again.learnt", Written.number("%.1f", spread.getAsDouble())));
    }

    @Override
    public void changed() {
        view.update();
        if (!model.sheet().equals(assessed)) {
            assess();
        }
    }

    @Override
    public void refused() {
        if (!model.away(model.large())) {
            say(Texts.of("ground.first"));
            return;
        }
        boolean blank =
                model.sheet().view(model.large()).map(ViewMarks::isBlank).orElse(true);
        say(Texts.of(blank ? "film.coming" : "film.elsewhere"));
    }

    private void assess() {
        MarkSheet sheet = model.sheet();
        assessed = sheet;
        RangeBook by = ranges.all();
        if (late.getStatus() != Animation.Status.RUNNING) {
            late.playFromStart();
        }
        assessing.run(() -> Assessment.of(sheet, by), a -> {
            late.stop();
            assessment = Optional.of(a);
            view.show(a);
            whenAssessed.run();
        });
    }

    /** Undoes a slip of the marking in the way that fits best. */
    void mend(Slip slip) {
        Lesson lesson = model.lesson();
        background.run(
                () -> Gate.best(lesson.sheet(), slip),
                best -> best.filter(m -> model.lesson() == lesson).ifPresent(mend -> {
                    model.mend(mend);
                    if (slip == Slip.VIEWS_EXCHANGED) {
                        view.clear();
                        clips.openAll();
                    }
                    say(Texts.of("findings.mended"));
                }));
    }

    /** Whether findings are on their way that will have the picture painted anew. */
    public boolean follows() {
        return !model.sheet().equals(assessed) && !model.sheet().views().isEmpty();
    }

    /** Names of marks of a view that do not fit the rest. */
    public Set<String> doubted(View of) {
        return assessment
                .map(a -> a.posture().doubts().stream()
                        .filter(d -> d.view() == of)
                        .map(Doubt::mark)
                        .collect(Collectors.toSet()))
                .orElse(Set.of());
    }

    public KeyBook keyBook() {
        return keys;
    }

    public void act(Act act) {
        acts.perform(act);
    }

    /** Says that all is kept, and where; or what is not, and why. */
    public void kept() {
        keeper.kept();
    }

    @Override
    public void close() {
        films.player().forget();
        assistant.close();
        frames.close();
        clips.close();
    }
}
