package org.toeline.desk.handover;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.film.Films;
import org.toeline.desk.film.Reel;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;

/** What can be done with the handout by one key, on its own screen and on the lesson's: copied, printed, kept, shown large. */
public final class HandOverActs {

    private final Studio studio;
    private final Supplier<HandOverScreen> screen;
    private final Supplier<LargeSight> making;
    private Optional<LargeSight> sight = Optional.empty();

    /**
     * @param screen the handout's own screen, asked for when something is done with it
     * @param reels  the film of a view
     * @param keys   what a key does to the film while it is shown large; answers false for the key that leaves
     */
    public HandOverActs(
            Studio studio,
            Supplier<HandOverScreen> screen,
            Films films,
            Function<View, Optional<Reel>> reels,
            Predicate<KeyEvent> keys) {
        this.studio = studio;
        this.screen = screen;
        this.making = () -> new LargeSight(studio, screen.get().handOver(), films, reels, keys);
    }

    /** The still onto the clipboard. */
    public void copy() {
        if (isReady()) {
            screen.get().handOver().still(this::copied);
        }
    }

    private void copied(BufferedImage still) {
        ClipboardContent content = new ClipboardContent();
        content.putImage(SwingFXUtils.toFXImage(still, (@Nullable WritableImage) null));
        Clipboard.getSystemClipboard().setContent(content);
        studio.say().accept(Texts.of("copied"));
    }

    /** The page onto paper, by a printer that is asked for. */
    public void print(Window owner) {
        if (isReady()) {
            studio.background()
                    .run(
                            Printers::all,
                            found -> new PrintDialog(studio, screen.get().handOver()).ask(found, owner));
        }
    }

    public void keepStill() {
        if (isReady()) {
            screen.get().keepStill();
        }
    }

    /** The whole screen for the player. */
    public void large(Window owner) {
        LargeSight large = sight.orElseGet(making);
        sight = Optional.of(large);
        large.show(owner);
    }

    /** Else it says why not. */
    private boolean isReady() {
        boolean ready = screen.get().handOver().isReady();
        if (!ready) {
            studio.say().accept(screen.get().handOver().whyNot());
        }
        return ready;
    }
}
