/** What is plugged in: receivers and pedals. */
@NullMarked
package crowdline.app.window.device;

import org.jspecify.annotations.NullMarked;
