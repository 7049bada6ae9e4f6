/** Labels of a board's sides, in the languages whose pages are read. From memory. */
export const widthLabel =
	/^(?:board\s)?(?:width|breite|szerokość|ширина|larghezza|largeur|anchura|ancho|largura|genişlik|breedte|šířka|chiều\srộng)(?:\s?\((mm|cm)\))?$/iu;
export const otherSideLabel =
	/^(?:board\s)?(?:depth|length|height|tiefe|länge|höhe|głębokość|wysokość|długość|глибина|довжина|висота|глубина|длина|высота|profondeur|longueur|hauteur|profundidad|altura|lunghezza|profondità|altezza|comprimento|profundidade|diepte|lengte|hoogte|hloubka|výška|délka|derinlik|uzunluk|yükseklik|chiều\sdài)(?:\s?\((mm|cm)\))?$/iu;

export const isSideLabel = (label: string): boolean => widthLabel.test(label) || otherSideLabel.test(label);
