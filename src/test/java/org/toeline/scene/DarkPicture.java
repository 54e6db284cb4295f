package org.toeline.scene;

import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/**
 * Pictures of {@link RandomPicture} as a dark bay would give them: FROM TO GAIN NOISE HEIGHT. What is lit to full white comes out at
 * so many levels of 255 times GAIN, with noise of so many levels, each pixel and colour for itself, and the picture is no higher than
 * HEIGHT. The noise that is there already counts as made smaller with it.
 */
public final class DarkPicture {

    private DarkPicture() {}

    public static void main(String[] arguments) throws Exception {
        double gain = Double.parseDouble(arguments[2]);
        double noise = Double.parseDouble(arguments[3]);
        int most = Integer.parseInt(arguments[4]);
        Path to = Files.createDirectories(Path.of(arguments[1]));
        File[] files = new File(arguments[0]).listFiles((folder, name) -> name.endsWith(".png"));
        Arrays.sort(files);
        for (File file : files) {
            int number =
                    Integer.parseInt(file.getName().substring(0, file.getName().indexOf('-')));
            double darker = gain / RandomLessons.look(number).gain();
            SplittableRandom random = new SplittableRandom(file.getName().hashCode());
            BufferedImage dark = dark(smaller(ImageIO.read(file), most), darker, noise, random);
            ImageIO.write(dark, "png", to.resolve(file.getName()).toFile());
        }
    }

    /** By areas; as it is where it is no higher. */
    private static BufferedImage smaller(BufferedImage image, int most) {
        if (image.getHeight() <= most) {
            return image;
        }
        int height = most;
        int width = (int) Math.round((double) image.getWidth() * most / image.getHeight());
        double share = (double) image.getHeight() / most;
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                small.setRGB(x, y, area(image, x * share, y * share, share));
            }
        }
        return small;
    }

    private static int area(BufferedImage image, double left, double top, double side) {
        double[] sum = new double[4];
        for (int y = (int) top; y < Math.min(image.getHeight(), top + side); y++) {
            double down = Math.min(y + 1, top + side) - Math.max(y, top);
            for (int x = (int) left; x < Math.min(image.getWidth(), left + side); x++) {
                double weight = down * (Math.min(x + 1, left + side) - Math.max(x, left));
                int p = image.getRGB(x, y);
                for (int c = 0; c < 3; c++) {
                    sum[c] += weight * (p >> 16 - 8 * c & 255);
                }
                sum[3] += weight;
            }
        }
        int p = 0;
        for (int c = 0; c < 3; c++) {
            p = p << 8 | (int) Math.round(sum[c] / sum[3]);
        }
        return p;
    }

    private static BufferedImage dark(BufferedImage image, double darker, double noise, SplittableRandom random) {
        BufferedImage dark = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int p = image.getRGB(x, y);
                int q = 0;
                for (int c = 0; c < 3; c++) {
                    double grain = noise * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
                    double v = darker * (p >> 16 - 8 * c & 255) + grain;
                    q = q << 8 | (int) Math.round(Math.max(0, Math.min(255, v)));
                }
                dark.setRGB(x, y, q);
            }
        }
        return dark;
    }
}
