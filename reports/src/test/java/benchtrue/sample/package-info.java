/**
 * The invented shop and its truth.
 *
 * <p>In: {@link benchtrue.sample.SampleOptions}. Out: a shop folder on disk and {@link benchtrue.sample.Truth}. Refused: a
 * folder that is not empty. The generator is the one of methods, section 10: bench hours are book × load × technician ×
 * class × traits × log-normal noise; quotes are book × writer's habit × condition seen. Bench hours of the repair types are
 * common practice, without a source.
 */
package benchtrue.sample;
