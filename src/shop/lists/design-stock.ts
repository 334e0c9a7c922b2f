import { bad, good, type Result } from '../../base/index.ts';
import type { Catalog, Material } from '../../catalog/index.ts';
import type { StockRow } from '../../design/index.ts';
import { CellReader, countCell, lengthCell, nameCell, offcutCell, orEmpty, priceCell } from './cells.ts';
import { type CsvRow, csvRows } from './csv-rows.ts';
import { STOCK_COLUMNS } from './layout-lists.ts';

/** The material by its id, by its name, or by its name without the thickness where that stands in a column of its own. */
const materialNamed = (catalog: Catalog, text: string, thickness: number | null): Material | undefined => {
  const asked = text.toLowerCase();
  const withThickness = thickness === null ? null : `${asked} ${thickness} mm`;
  return [...catalog.materials.values()].find(({ id, name }) => {
    const known = name.toLowerCase();
    return id === asked || known === asked || known === withThickness;
  });
};

const materialFrom = (row: CsvRow, reader: CellReader, catalog: Catalog): string => {
  const text = row.cell('material');
  const thickness = reader.read(row, 'thickness', orEmpty(lengthCell, null), null);
  const material = materialNamed(catalog, text, thickness);
  if (material === undefined) {
    const known = catalog.materials.keys().next().value ?? '';
    const got = text === '' ? 'nothing' : `'${text}'`;
    reader.refuse(row, 'material', `a material of the catalog by its name or id, as ${known}`, got);
    return '';
  }
  const [thin, thick] = material.thicknessRangeMm;
  if (thickness !== null && (thickness < thin || thickness > thick)) {
    // By its nominal name it may still be the same: 18 mm is sold as 17.7.
    const nominal = material.name.includes(` ${thickness} mm`);
    if (!nominal) {
      const expected = `${thin} to ${thick} mm for ${material.name}`;
      reader.refuse(row, 'thickness', expected, `'${row.cell('thickness')}'`);
    }
  }
  return material.id;
};

const rowFrom = (row: CsvRow, reader: CellReader, catalog: Catalog): Omit<StockRow, 'id'> => {
  const offcut = reader.read(row, 'offcut', offcutCell, false);
  return {
    material: materialFrom(row, reader, catalog),
    name: reader.read(row, 'name', nameCell, ''),
    lengthMm: reader.read(row, 'length', lengthCell, 0),
    widthMm: reader.read(row, 'width', lengthCell, 0),
    // An offcut is there once where nobody counted.
    quantity: reader.read(row, 'qty', orEmpty(countCell(0), offcut ? 1 : null), null),
    price: reader.read(row, 'price', orEmpty(priceCell, null), null),
    offcut,
  };
};

/** More rows than the document takes are no rack of one shop. */
const MOST_STOCK = 2000;

/**
 * Reads a list of sheets and offcuts for a design, with the columns of the list that any layout takes; here the material
 * is needed, and a price may be left out. An error names every cell that cannot be read.
 */
export const readDesignStock = (text: string, catalog: Catalog): Result<readonly Omit<StockRow, 'id'>[]> => {
  const rows = csvRows(text, [...STOCK_COLUMNS, 'material']);
  if (!rows.ok) return rows;
  if (rows.value.length > MOST_STOCK)
    return bad([{ at: '', code: 'too-many-rows', expected: String(MOST_STOCK), got: String(rows.value.length) }]);
  const reader = new CellReader();
  const read = rows.value.map((row) => rowFrom(row, reader, catalog));
  return reader.problems.length > 0 ? bad(reader.problems) : good(read);
};
