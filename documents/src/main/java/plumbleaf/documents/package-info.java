@NullMarked
package plumbleaf.documents;

import org.jspecify.annotations.NullMarked;
