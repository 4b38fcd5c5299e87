/**
 * Point files of a survey as shots: separator, order of the columns and units are found out and told, and every bad line is named.
 *
 * <p>Read {@link plumbleaf.jobfile.survey.PointFile}.
 */
@NullMarked
package plumbleaf.jobfile.survey;

import org.jspecify.annotations.NullMarked;
