package org.toeline.desk.dialog;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.text.Texts;

/**
 * The system's dialog for a file or a folder: titled by what was pressed, and open where something of its kind was chosen last, in
 * this run or an earlier one. JavaFX thread.
 */
public final class FileDialog {

    /** What is chosen; each has a folder of its own. */
    public enum Kind {
        CLIPS("clip"),
        LESSONS("lesson"),
        SHOTS("shots"),
        /** Stills, pages and tables, for people to look at. */
        PAGES("page"),
        RANGES("ranges"),
        LEDGER("ledger");

        private final String id;

        Kind(String id) {
            this.id = id;
        }
    }

    private final Preferences left = Preferences.userRoot().node("/org/toeline/desk");
    private final String key;
    private final FileChooser files = new FileChooser();
    private final DirectoryChooser folders = new DirectoryChooser();

    /** @param pressed the words that led here, by their key */
    public FileDialog(Kind kind, String pressed) {
        key = kind.id + "Folder";
        String title = Texts.of(pressed).replace(" …", "");
        files.setTitle(title);
        folders.setTitle(title);
        from(left.get(key, ""));
    }

    /** Opens in this folder, if there is one. */
    public FileDialog from(String folder) {
        File there = new File(folder);
        if (there.isDirectory()) {
            files.setInitialDirectory(there);
            folders.setInitialDirectory(there);
        }
        return this;
    }

    /** Proposes a name for a file that is written. */
    public FileDialog named(String name) {
        files.setInitialFileName(name);
        return this;
    }

    /** Shows files with these endings, under what they are called; the first of several is shown first. */
    public FileDialog showing(String called, String... endings) {
        files.getExtensionFilters().add(new FileChooser.ExtensionFilter(called, endings));
        return this;
    }

    public Optional<Path> open(Window owner) {
        return chosen(files.showOpenDialog(owner));
    }

    /** In the order of their names; none when nothing was chosen. */
    public List<Path> openSeveral(Window owner) {
        return Optional.ofNullable(files.showOpenMultipleDialog(owner)).orElse(List.of()).stream()
                .sorted()
                .map(this::remembered)
                .toList();
    }

    public Optional<Path> save(Window owner) {
        return chosen(files.showSaveDialog(owner));
    }

    /** A folder instead of a file. */
    public Optional<Path> folder(Window owner) {
        Optional<File> chosen = Optional.ofNullable(folders.showDialog(owner));
        chosen.ifPresent(folder -> left.put(key, folder.toString()));
        return chosen.map(File::toPath);
    }

    private Optional<Path> chosen(@Nullable File file) {
        return Optional.ofNullable(file).map(this::remembered);
    }

    Path remembered(File file) {
        Optional.ofNullable(file.getParent()).ifPresent(folder -> left.put(key, folder));
        return file.toPath();
    }

    /** As the system is asked to show it. */
    FileChooser files() {
        return files;
    }
}
