package plumbleaf.documents.mark;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;

class LinkCodeTest {
    private static final int PIXELS = 600;

    /** What a phone would make of the squares. */
    private static String scanned(List<Primitive> squares) throws Exception {
        int[] pixels = new int[PIXELS * PIXELS];
        Arrays.fill(pixels, 0xFFFFFFFF);
        for (Primitive square : squares) {
            Box box = square.extents(Scale.FULL);
            for (int x = (int) Math.round(box.minX() * PIXELS); x < Math.round(box.maxX() * PIXELS); x++)
                for (int y = (int) Math.round((1 - box.maxY()) * PIXELS);
                        y < Math.round((1 - box.minY()) * PIXELS);
                        y++) pixels[y * PIXELS + x] = 0xFF22282B;
        }
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(PIXELS, PIXELS, pixels))))
                .getText();
    }

    @Test
    void readsBackAsTheAddress() throws Exception {
        for (String address :
                List.of("https://plumbleaf.example/jobs/abc123", "https://fence.example/" + "x".repeat(180)))
            assertThat(scanned(LinkCode.of(address))).isEqualTo(address);
    }

    @Test
    void noAddressNoCode() {
        assertThat(LinkCode.of("")).isEmpty();
        assertThat(LinkCode.of("x".repeat(5000))).isEmpty();
    }
}
