package plumbleaf.web.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PhotosOfQuestionsTest {
    @Test
    void aPhotoCarriesItsQuestionHoweverLongItsOwnNameIs() {
        assertThat(PhotosOfQuestions.named("Hand of G1", "IMG_0412.jpg")).isEqualTo("Hand of G1, IMG_0412.jpg");
        assertThat(PhotosOfQuestions.named(" ", "IMG_0412.jpg")).isEqualTo("IMG_0412.jpg");
        String kept = JobFiles.tidy(PhotosOfQuestions.named("Hand of G1", "x".repeat(300) + "0412.jpg"));
        assertThat(kept).startsWith("Hand of G1, xxx").endsWith("xxx0412.jpg").hasSize(JobFiles.LONGEST_NAME);
    }
}
