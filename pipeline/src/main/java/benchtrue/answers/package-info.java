/**
 * The answers that every output gives: what is selected and in which order, decided once.
 *
 * <p>In: findings, the drafted revision, the costed shop. Out: {@link benchtrue.answers.Answers}. Page, workbooks, pictures,
 * summary and digest render them, cut them to their room and rank nothing.
 */
package benchtrue.answers;
