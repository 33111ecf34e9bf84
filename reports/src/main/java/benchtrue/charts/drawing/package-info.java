/** How a picture is drawn: plots, marks, letters, colours, SVG text. Knows nothing of repairs. */
package benchtrue.charts.drawing;
