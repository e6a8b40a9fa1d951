package crowdline.paper;

import crowdline.sheet.page.Flow;

/**
 * A card before it is numbered; it may take several sheets.
 *
 * @param name what it is of
 * @param when it is of use, in a few words
 * @param next what comes after it, or empty
 * @param nextWhen when that is
 */
record Card(PaperAct act, String name, String when, String next, String nextWhen, Flow flow) {}
