/** Where the jobs lie: the list, and the demo job. */
@NullMarked
package plumbleaf.web.desk;

import org.jspecify.annotations.NullMarked;
