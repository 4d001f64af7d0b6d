package beltmark.signoff;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A photo drawn anew: only its points are taken over, so that nothing else a camera writes into a file stays in it, such as
 * the place where it was taken. Told by its content, not by its name; scaled down to what a record needs.
 */
final class PhotoImage {

    private static final List<String> KINDS = List.of("jpeg", "png");
    private static final int MOST_POINTS_A_SIDE = 12_000;
    private static final int LONGEST_SIDE = 2000;

    private PhotoImage() {}

    /** {@return the photo as a plain JPEG file, empty when what was sent is no JPEG or PNG, or too large a one} */
    static Optional<byte[]> redrawn(byte[] sent) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(sent))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return isTaken(reader) ? Optional.of(written(drawn(reader.read(0)))) : Optional.empty();
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException unreadable) {
            // a decoder meets a broken file with many kinds of exceptions
            return Optional.empty();
        }
    }

    /** Looks at the size before anything is unpacked. */
    private static boolean isTaken(ImageReader reader) throws IOException {
        return KINDS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))
                && reader.getWidth(0) <= MOST_POINTS_A_SIDE
                && reader.getHeight(0) <= MOST_POINTS_A_SIDE;
    }

    private static BufferedImage drawn(BufferedImage photo) {
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(photo.getWidth(), photo.getHeight()));
        int width = Math.max(1, (int) Math.round(photo.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(photo.getHeight() * scale));
        BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = plain.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.drawImage(photo, 0, 0, width, height, Color.WHITE, null);
        pen.dispose();
        return plain;
    }

    private static byte[] written(BufferedImage plain) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(plain, "jpeg", out);
        return out.toByteArray();
    }
}
