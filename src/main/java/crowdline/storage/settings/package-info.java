/** What the program keeps for the person at the desk: settings, learned buttons, paces, notes on figures. */
@NullMarked
package crowdline.storage.settings;

import org.jspecify.annotations.NullMarked;
