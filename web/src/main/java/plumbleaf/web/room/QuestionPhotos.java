package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Photo;
import plumbleaf.web.store.JobId;

/** The photos that were taken for a question of the walk. */
public interface QuestionPhotos {
    List<Photo> of(JobId job, String question);
}
