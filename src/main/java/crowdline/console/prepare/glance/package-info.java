/** The show at a glance: its acts, figures, remarks and findings in words. */
@NullMarked
package crowdline.console.prepare.glance;

import org.jspecify.annotations.NullMarked;
