package plumbleaf.documents.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.documents.drawing.Emblem;

class MarkFileTest {
    private static byte[] picture(String format, int wide, int high) throws IOException {
        BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, wide, high);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, wide / 2, high);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    private static BufferedImage seen(Emblem emblem) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(emblem.png()));
    }

    private static byte[] svg(String inside) {
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 50\">" + inside + "</svg>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static Emblem taken(byte[] bytes) {
        MarkFile.Answer answer = MarkFile.read(bytes);
        return answer.emblem().orElseThrow(() -> new AssertionError(answer.problem()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg"})
    void aPictureIsWhatItsFirstBytesSay(String format) throws IOException {
        Emblem emblem = taken(picture(format, 300, 100));
        assertThat(emblem.shape()).isEqualTo(3);
        assertThat(new Color(seen(emblem).getRGB(30, 50)).getRed()).isGreaterThan(240);
        assertThat(new Color(seen(emblem).getRGB(30, 50)).getGreen()).isLessThan(20);
        assertThat(seen(emblem).getRGB(270, 50)).isEqualTo(Color.WHITE.getRGB());
    }

    @Test
    void aLargePictureComesOutSmall() throws IOException {
        assertThat(seen(taken(picture("png", 3000, 1500))).getWidth()).isEqualTo(1200);
    }

    /** Places in the pixels of 1200 by 600: each shape is there where it should be and nothing beside it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<rect x='10' y='10' width='20' height='20' fill='#ff0000'/>|240,240|480,240",
                "<circle cx='50' cy='25' r='10'/>|600,300|760,300",
                "<ellipse cx='50' cy='25' rx='20' ry='5'/>|800,300|600,400",
                "<path d='M10 10h20v20h-20z'/>|240,240|480,240",
                "<path d='m10,10 20,0 0,20 -20,0z'/>|240,240|480,240",
                "<path d='M30 25A10 10 0 0 1 50 25z'/>|480,240|480,340",
                "<path d='M30 25A10 10 0 0 0 50 25z'/>|480,340|480,240",
                "<path d='M0 40C0 10 40 10 40 40z'/>|240,400|240,120",
                "<path d='M0 40Q20 0 40 40z'/>|240,400|240,160",
                "<polygon points='10,10 30,10 30,30 10,30'/>|240,240|480,240",
                "<g transform='translate(50 0)'><rect width='10' height='10'/></g>|660,60|60,60",
                "<g transform='scale(2)'><rect x='10' width='5' height='5'/></g>|260,60|150,60",
                "<line x1='0' y1='25' x2='100' y2='25' stroke='black' stroke-width='4'/>|600,300|600,340",
                "<path fill-rule='evenodd' d='M10 10h30v30h-30zM20 20h10v10h-10z'/>|150,300|300,300",
                "<g style='fill:none;stroke:#000;stroke-width:2'><rect x='10' y='10' width='30' height='30'/></g>|120,300|300,300",
            })
    void anSvgOfPlainShapesIsDrawn(String shape, String inked, String white) throws IOException {
        BufferedImage image = seen(taken(svg(shape)));
        assertThat(image.getRGB(x(inked), y(inked))).as(shape + " at " + inked).isNotEqualTo(Color.WHITE.getRGB());
        assertThat(image.getRGB(x(white), y(white))).as(shape + " beside").isEqualTo(Color.WHITE.getRGB());
    }

    private static int x(String place) {
        return Integer.parseInt(place.substring(0, place.indexOf(',')));
    }

    private static int y(String place) {
        return Integer.parseInt(place.substring(place.indexOf(',') + 1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<text x='1' y='9'>Fence</text>",
                "<image href='http://example.test/a.png'/>",
                "<script>alert(1)</script>",
                "<use href='#a'/>",
                "<rect width='9' height='9' fill='url(#g)'/>",
                "<rect width='9' height='9' class='a'/>",
                "<defs><style>.a{fill:red}</style></defs><rect width='9' height='9'/>",
                "<path d='M 1 x'/>",
                "<path d='M1'/>",
                "<foreignObject/>"
            })
    void whatIsNotPlainIsRefusedInWords(String inside) {
        MarkFile.Answer answer = MarkFile.read(svg(inside));
        assertThat(answer.emblem()).isEmpty();
        assertThat(answer.problem()).startsWith("the SVG");
    }

    @Test
    void aDocumentTypeIsNotFollowed() {
        String text =
                "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><svg xmlns=\"http://www.w3.org/2000/svg\""
                        + " viewBox=\"0 0 9 9\"><rect width=\"9\" height=\"9\"/></svg>";
        assertThat(MarkFile.read(text.getBytes(StandardCharsets.UTF_8)).problem())
                .contains("document type");
    }

    /** A head that claims more pixels than memory holds is refused before one of them is read. */
    @Test
    void aPictureThatClaimsToBeHugeIsRefused() throws IOException {
        byte[] bytes = picture("png", 10, 10);
        bytes[16] = 0;
        bytes[17] = 1;
        bytes[18] = 0x38;
        bytes[20] = 0;
        bytes[21] = 1;
        bytes[22] = 0x38;
        java.util.zip.CRC32 sum = new java.util.zip.CRC32();
        sum.update(bytes, 12, 17);
        for (int i = 0; i < 4; i++) bytes[29 + i] = (byte) (sum.getValue() >> (24 - 8 * i));
        assertThat(MarkFile.read(bytes).problem()).contains("25 million pixels");
    }

    @Test
    void damagedFilesAreRefusedNeverThrown() throws IOException {
        List<byte[]> good = List.of(
                picture("png", 60, 40), picture("jpg", 60, 40), svg("<path d='M10 10h20v20h-20z' fill='#123456'/>"));
        Random seeded = new Random(7);
        for (int i = 0; i < 1500; i++) {
            byte[] bytes = good.get(i % 3).clone();
            for (int k = 0; k < 1 + i % 9; k++)
                bytes[8 + seeded.nextInt(bytes.length - 8)] = (byte) seeded.nextInt(256);
            MarkFile.Answer answer = MarkFile.read(bytes);
            assertThat(answer.emblem().isPresent()).isEqualTo(answer.problem().isEmpty());
        }
    }

    @Test
    void nothingElseIsAMark() {
        assertThat(MarkFile.read(new byte[0]).problem()).isEqualTo("the file is empty");
        assertThat(MarkFile.read("GIF89a".getBytes(StandardCharsets.US_ASCII)).problem())
                .isEqualTo("it is neither PNG, JPEG nor SVG; save it as one of them");
        assertThat(MarkFile.read(new byte[2_000_001]).problem()).contains("2 MB");
    }

    @Test
    void aMarkKeepsItsShapeInItsRoom() throws IOException {
        Emblem emblem = taken(picture("png", 300, 100));
        assertThat(emblem.within(1, 5, 2, 2).width()).isEqualTo(2);
        assertThat(emblem.within(1, 5, 2, 0.3).width()).isCloseTo(0.9, within(1e-9));
        assertThat(emblem.within(1, 5, 2, 0.3).maxY()).isEqualTo(5);
    }
}
