package crowdline.console.prepare;

import crowdline.console.passes.PassesHost;
import java.util.function.Supplier;

/**
 * What the pages of the Prepare place work with.
 *
 * @param editor makes edits of the show
 * @param host asked for what takes time, and for kinds and figures
 * @param passes asked when somebody decides about a pass
 * @param changed told when what can be done here may have changed
 */
record Tools(Editor editor, Supplier<PrepareHost> host, Supplier<PassesHost> passes, Runnable changed) {}
