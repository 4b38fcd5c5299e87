package plumbleaf.web.files;

import java.util.List;
import org.springframework.stereotype.Component;
import plumbleaf.web.page.Photo;
import plumbleaf.web.room.QuestionPhotos;
import plumbleaf.web.store.JobId;

/** A photo of a question carries the question before its own name: {@code Hand of G1, IMG_0412.jpg}. So it says everywhere what it shows. */
@Component
class PhotosOfQuestions implements QuestionPhotos {
    private static final String AND = ", ";
    private static final int LONGEST_QUESTION = 60;

    private final JobFiles files;

    PhotosOfQuestions(JobFiles files) {
        this.files = files;
    }

    static String named(String question, String name) {
        if (question.isBlank()) return name;
        String begin = begin(question);
        String own = JobFiles.tidy(name);
        // Of a name too long for both, its end stays, where its number and kind are; without its question the photo
        // would not be found again.
        return begin
                + own.substring(
                        Math.min(own.length(), Math.max(0, begin.length() + own.length() - JobFiles.LONGEST_NAME)));
    }

    private static String begin(String question) {
        String asked = question.strip();
        return asked.substring(0, Math.min(asked.length(), LONGEST_QUESTION)) + AND;
    }

    @Override
    public List<Photo> of(JobId job, String question) {
        return files.of(job).stream()
                .filter(line -> !line.trashed() && line.kind().isPhoto())
                .filter(line -> !line.part().equals(JobFiles.OFFICE))
                .filter(line -> line.name().startsWith(begin(question)))
                .map(line -> new Photo("/jobs/" + job.text() + "/files/" + line.id(), line.name()))
                .toList();
    }
}
