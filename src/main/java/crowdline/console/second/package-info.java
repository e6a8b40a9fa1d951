/**
 * The second window: what a co-commentator or interpreter sees. It is only read, and never takes the keys.
 */
@NullMarked
package crowdline.console.second;

import org.jspecify.annotations.NullMarked;
