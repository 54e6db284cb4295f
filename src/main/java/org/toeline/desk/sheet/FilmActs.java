package org.toeline.desk.sheet;

import java.util.Optional;
import org.toeline.desk.film.Films;
import org.toeline.desk.film.Player;
import org.toeline.desk.film.Span;
import org.toeline.desk.keys.Act;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;

/** What the keys do to the film: looking, which changes nothing of the lesson. */
final class FilmActs {

    private final Sheet sheet;
    private final Films films;

    FilmActs(Sheet sheet) {
        this.sheet = sheet;
        this.films = sheet.films();
    }

    void perform(Act act) {
        Player player = films.player();
        switch (act) {
            case PLAY -> player.toggle();
            case SLOWER -> player.pace(player.pace().slower());
            case FASTER -> player.pace(player.pace().faster());
            case OTHER_WAY -> player.pace(player.pace().turned());
            case REPEAT -> repeat();
            case IN_STEP -> films.toggleTogether();
            case ONE_MOMENT -> oneMoment();
            default -> throw new IllegalArgumentException(act.name());
        }
    }

    /** The stretch chosen on the strip; else the swing after the moment of address, where it was found. */
    private void repeat() {
        View view = sheet.model().large();
        if (films.player().repeated().isPresent()) {
            films.repeat(view, Optional.empty());
            sheet.say(Texts.of("film.once"));
            return;
        }
        Optional<Span> swing = sheet.clips().swing(view);
        films.repeat(view, swing);
        sheet.say(Texts.of(swing.isPresent() ? "film.repeats" : "film.no-stretch"));
    }

    /** The frame of this view and, pressed again, that of the other are one moment. */
    private void oneMoment() {
        String key = sheet.keyBook().key(Act.ONE_MOMENT).getDisplayText();
        sheet.say(Texts.of(films.oneMoment() ? "step.tied" : "step.first", key));
    }
}
