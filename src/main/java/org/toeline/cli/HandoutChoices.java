package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Phrases;
import org.toeline.advice.Words;
import org.toeline.document.OwnDocument;
import org.toeline.geometry.ImagePoint;
import org.toeline.handout.FaceCover;
import org.toeline.handout.Handout;
import org.toeline.handout.Paper;
import org.toeline.handout.Signed;
import org.toeline.handout.StillOptions;
import org.toeline.language.Language;
import org.toeline.language.Sentences;
import org.toeline.mark.View;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a handout shows, and in which words. */
final class HandoutChoices {

    private static final Sentences SENTENCES = Sentences.of(HandoutChoices.class);

    /** How a handout is signed. */
    private enum Sign {
        none,
        date,
        initials,
        name
    }

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--language", paramLabel = "LANGUAGE")
    private @Nullable String language;

    @Option(names = "--inches")
    private boolean inches;

    @Option(names = "--paper", paramLabel = "PAPER")
    private @Nullable String paper;

    @Option(names = "--coach", paramLabel = "TEXT", defaultValue = "")
    private String coach;

    @Option(names = "--phrases", paramLabel = "FILE")
    private @Nullable Path phrases;

    @Option(names = "--contact", paramLabel = "TEXT", defaultValue = "")
    private String contact;

    @Option(names = "--replace")
    private boolean replaces;

    @Option(names = "--whole-set")
    private boolean wholeSet;

    @Option(names = "--view", paramLabel = "VIEW")
    private @Nullable String view;

    @Option(names = "--sign", paramLabel = "HOW", defaultValue = "initials")
    private Sign sign;

    @Option(names = "--cover-face")
    private boolean coverFace;

    @Option(names = "--cover", paramLabel = "VIEW:X,Y,HALF-WIDTH,HALF-HEIGHT")
    private List<String> covers = new ArrayList<>();

    private @Nullable Phrases own;

    private Locale locale() {
        return language == null ? Language.now() : Locale.forLanguageTag(language);
    }

    Words words() {
        Locale locale = locale();
        if (locale.getLanguage().isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), SENTENCES.of("choices.language", String.valueOf(language)));
        }
        return Words.of(locale, inches ? LengthUnit.INCH : LengthUnit.CENTIMETRE)
                .with(phrases());
    }

    /** The coach's own phrases, read once; what of them cannot be used is said on standard error. */
    private Phrases phrases() {
        if (own == null) {
            own = phrases == null ? Phrases.NONE : read(phrases);
        }
        return own;
    }

    private Phrases read(Path file) {
        try {
            Phrases.Read read = Phrases.read(Files.readAllBytes(file), file.toString());
            read.said().forEach(spec.commandLine().getErr()::println);
            return read.phrases();
        } catch (IOException | IllegalArgumentException e) {
            spec.commandLine().getErr().println(SENTENCES.of("phrases.not-read", file, OwnDocument.reason(e)));
            return Phrases.NONE;
        }
    }

    /** Whether files that are there may be replaced. */
    boolean replaces() {
        return replaces;
    }

    /** The stem of files that go into a folder: with a number where it is taken, unless what is there may be replaced. */
    String stem(Path folder, String wanted) {
        return replaces ? wanted : Handout.freeStem(folder, wanted);
    }

    StillOptions options() {
        Signed signed =
                switch (sign) {
                    case none -> Signed.NOT;
                    case date -> Signed.DATE;
                    case initials -> Signed.INITIALS_AND_DATE;
                    case name -> Signed.FULL_NAME_AND_DATE;
                };
        return new StillOptions(
                wholeSet ? StillOptions.Lines.ALL : StillOptions.Lines.THAT_MATTER,
                signed,
                Optional.ofNullable(view).map(v -> view("--view", v)),
                face(),
                contact());
    }

    Paper paper() {
        if (paper == null) {
            return Paper.usual(locale());
        }
        try {
            return Paper.valueOf(paper.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), SENTENCES.of("choices.paper", paper));
        }
    }

    String coachsWords() {
        if (coach.length() > Handout.MOST_COACHS_WORDS) {
            throw new ParameterException(
                    spec.commandLine(), SENTENCES.of("choices.coach", coach.length(), Handout.MOST_COACHS_WORDS));
        }
        return coach;
    }

    private String contact() {
        String said = contact.isBlank() ? phrases().contact() : contact;
        if (said.length() > StillOptions.LONGEST_CONTACT) {
            throw new ParameterException(
                    spec.commandLine(), SENTENCES.of("choices.contact", said.length(), StillOptions.LONGEST_CONTACT));
        }
        return said;
    }

    private FaceCover face() {
        if (covers.isEmpty()) {
            return coverFace ? FaceCover.headMark() : FaceCover.none();
        }
        Map<View, FaceCover.Oval> ovals = new EnumMap<>(View.class);
        for (String cover : covers) {
            String[] parts = cover.split("[:,]");
            try {
                ovals.put(
                        view("--cover", parts[0]),
                        new FaceCover.Oval(
                                new ImagePoint(Double.parseDouble(parts[1]), Double.parseDouble(parts[2])),
                                Double.parseDouble(parts[3]),
                                Double.parseDouble(parts[4])));
            } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
                throw new ParameterException(spec.commandLine(), SENTENCES.of("choices.cover", cover));
            }
        }
        return new FaceCover.Drawn(ovals);
    }

    private View view(String option, String id) {
        for (View known : View.values()) {
            if (known.id().equals(id)) {
                return known;
            }
        }
        throw new ParameterException(spec.commandLine(), SENTENCES.of("choices.view", option, id));
    }
}
