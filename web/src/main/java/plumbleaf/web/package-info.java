@NullMarked
package plumbleaf.web;

import org.jspecify.annotations.NullMarked;
