package org.toeline.desk;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.ImageView;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.document.WholeFile;
import org.toeline.handout.Guide;
import org.toeline.handout.GuidePage;

/** The two pages for the bay: to read, and to keep as a PDF. */
final class GuideWindow {

    private static final double SHOWN_WIDTH = 660;
    private static final double FINE = 2;

    private final Studio studio;
    private final List<GuidePage> pages;

    GuideWindow(Studio studio) {
        this.studio = studio;
        pages = Guide.pages(
                studio.records().settings().folder().folder(), Path.of(System.getProperty("user.home"), "Toeline"));
    }

    void show(Window owner) {
        studio.background().run(() -> pages.stream().map(GuideWindow::drawn).toList(), images -> {
            VBox column = new VBox(12);
            for (int i = 0; i < images.size(); i++) {
                ImageView view = new ImageView(SwingFXUtils.toFXImage(images.get(i), null));
                view.setFitWidth(SHOWN_WIDTH);
                view.setPreserveRatio(true);
                view.setId("guide-page-" + (i + 1));
                view.setAccessibleText(pages.get(i).described());
                column.getChildren().add(view);
            }
            new DialogFrame(owner, pages.get(0).title())
                    .middle(column)
                    .leave(Texts.of("dialog.close"))
                    .choice("guide-print", Texts.of("guide.print"), () -> keep(owner))
                    .show();
        });
    }

    private static BufferedImage drawn(GuidePage page) {
        BufferedImage image = new BufferedImage(
                (int) (page.width() * FINE), (int) (page.height() * FINE), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(FINE, FINE);
        page.paint(g);
        g.dispose();
        return image;
    }

    private void keep(Window owner) {
        new FileDialog(FileDialog.Kind.PAGES, "guide.print")
                .named(Texts.of("guide.file"))
                .showing(Texts.of("guide.files"), "*.pdf")
                .save(owner)
                .ifPresent(file -> studio.background()
                        .run(
                                () -> {
                                    WholeFile.write(file, Guide.pdf(pages));
                                    return file;
                                },
                                kept -> studio.say().accept(Texts.of("kept", kept))));
    }
}
