package crowdline.list.piece;

import crowdline.list.name.Names;

/**
 * A figure's name in a piece.
 *
 * @param from its first word
 * @param to the word behind its last
 */
record Found(Names.Sense sense, int from, int to) {}
