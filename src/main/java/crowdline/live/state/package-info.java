/** The running show as a state machine: state and event give the next state. No threads and no clock of its own. */
@NullMarked
package crowdline.live.state;

import org.jspecify.annotations.NullMarked;
