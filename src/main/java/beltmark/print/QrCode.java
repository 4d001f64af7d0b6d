package beltmark.print;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A text as a QR code (ISO/IEC 18004) for a template: error correction M, the quiet zone of 4 modules around it.
 *
 * @param size how many modules it is wide and high, the quiet zone included
 * @param path its dark modules as an SVG path, one unit a module
 */
public record QrCode(int size, String path) {

    private static final int QUIET_MODULES = 4;

    /** {@return the code of a text that fits into one} */
    public static QrCode of(String text) {
        try {
            BitMatrix modules = new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    QUIET_MODULES));
            return new QrCode(modules.getWidth(), path(modules));
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a QR code: " + text.length() + " characters", e);
        }
    }

    /** One rectangle for each run of dark modules: with a gap between single modules printers leave white hairlines. */
    private static String path(BitMatrix modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append("M%d %dh%dv1h-%dz".formatted(from, y, x - from, x - from));
                }
            }
        }
        return path.toString();
    }
}
