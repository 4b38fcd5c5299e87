package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.packet.PacketSubject;
import plumbleaf.documents.packet.ProfileSheets;
import plumbleaf.documents.packet.SiteSheet;
import plumbleaf.engine.design.Design;

/** What a fence meets that is there already is said on plan and profile alike: a fence that is not ours, a slab whose posts are cored and not dug. */
class WhatIsThereTest {
    private static PacketSubject yard() throws IOException {
        String wall = "{ \"kind\": \"wall\", \"of\": \"masonry\" }";
        String kiln = PaperTrial.example("kiln-yard.json");
        assertThat(kiln).contains(wall);
        Design design = PaperTrial.design(
                kiln.replace(wall, "{ \"kind\": \"neighbour\", \"fence\": \"Brogan's\", \"height\": \"5' 6\\\"\" }")
                        .replace(
                                "\"style\": \"wood-side-by-side\",",
                                "\"style\": \"wood-side-by-side\", \"otherPosts\": [ { \"from\": \"50'\", \"to\": \"62'\","
                                        + " \"support\": \"core-socket\" } ],"));
        return PacketSubjects.of(design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID));
    }

    private static List<String> words(List<Drawing> drawings) {
        List<String> words = new ArrayList<>();
        for (Drawing drawing : drawings)
            for (Mark mark : drawing.marks()) if (mark instanceof Text text) words.add(text.text());
        return words;
    }

    @Test
    void thePlanSaysIt() throws IOException {
        assertThat(words(List.of(SiteSheet.drawing(yard()))))
                .contains("not ours: Brogan's", "5' 6\" high", "posts cored into concrete")
                .doesNotContain("wall");
    }

    @Test
    void theProfileSaysIt() throws IOException {
        assertThat(words(ProfileSheets.drawings(yard()))).contains("not ours: Brogan's, 5' 6\" high", "core 4\"");
    }
}
