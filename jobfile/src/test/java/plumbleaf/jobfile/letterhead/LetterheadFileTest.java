package plumbleaf.jobfile.letterhead;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.input.InputError;

class LetterheadFileTest {
    private static LetterheadFile read(String rows) {
        return LetterheadFile.read("letterhead.csv", "what,words\n" + rows);
    }

    @Test
    void nameFirstThenTheOtherLinesInTheirOrder() {
        LetterheadFile file = read("""
                phone,(555) 010-0142
                name,Quill and Rail Fence
                address,"9 Latch Row, Lower Quill"
                license,C13-000000
                mark,logo.svg
                paper,a4
                sheets,letter
                """);
        assertThat(file.errors()).isEmpty();
        assertThat(file.lines())
                .containsExactly(
                        "Quill and Rail Fence", "(555) 010-0142", "9 Latch Row, Lower Quill", "License C13-000000");
        assertThat(file.mark()).isEqualTo("logo.svg");
        assertThat(file.paper()).isEqualTo("a4");
        assertThat(file.sheets()).isEqualTo("letter");
    }

    @Test
    void everyBadRowIsNamedAtOnce() {
        assertThat(read("nmae,Quill\npaper,foolscap\n").errors().stream().map(InputError::line))
                .containsExactly(2, 3);
        assertThat(read("phone,1\n").errors().stream().map(InputError::text))
                .containsExactly("letterhead.csv: there is no name; add a row: name,\"Your company\"");
    }
}
