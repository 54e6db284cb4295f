package org.toeline.desk.records;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.toeline.document.WholeFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.mark.View;

/**
 * The frames that were marked, a JPEG a view in the folder of a lesson's stills: what is left to look at when a clip is gone.
 * They are no handouts, which are PNGs there. Off the interface thread.
 */
public final class AddressFrames {

    private static final float QUALITY = 0.9f;

    private AddressFrames() {}

    private static Path file(LedgerPlace.Folder place, int lessonId, View view) {
        return Stills.folder(place, lessonId).resolve("frame-" + view.id() + ".jpg");
    }

    /** @param frame opaque, in the clip's full resolution */
    public static void write(LedgerPlace.Folder place, int lessonId, View view, BufferedImage frame)
            throws IOException {
        Path file = file(place, lessonId, view);
        Files.createDirectories(file.getParent());
        WholeFile.write(file, jpeg(frame));
    }

    private static byte[] jpeg(BufferedImage frame) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(frame, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** Empty when none was kept, or it cannot be read. */
    public static Optional<BufferedImage> read(LedgerPlace.Folder place, int lessonId, View view) throws IOException {
        Path file = file(place, lessonId, view);
        return Files.isRegularFile(file) ? Optional.ofNullable(ImageIO.read(file.toFile())) : Optional.empty();
    }
}
