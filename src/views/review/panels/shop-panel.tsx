import type { ReviewShop } from '../../../shop/index.ts';
import { useReview } from '../state.ts';

const Parts = ({ parts }: Pick<ReviewShop, 'parts'>) => (
  <>
    <h2>Parts to cut</h2>
    <table aria-label="Parts to cut">
      <thead>
        <tr>
          <th scope="col">mark</th>
          <th scope="col">part</th>
          <th scope="col">no.</th>
          <th scope="col">size</th>
          <th scope="col">material</th>
        </tr>
      </thead>
      <tbody>
        {parts.map((part) => (
          <tr key={part.mark}>
            <th scope="row">{part.mark}</th>
            <td>
              <bdi>{part.name}</bdi>
            </td>
            <td>{part.quantity}</td>
            <td>{part.size}</td>
            <td>{part.material}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </>
);

const Hardware = ({ hardware }: Pick<ReviewShop, 'hardware'>) => (
  <>
    <h2>Hardware</h2>
    <table aria-label="Hardware">
      <thead>
        <tr>
          <th scope="col">item</th>
          <th scope="col">no.</th>
          <th scope="col">where</th>
        </tr>
      </thead>
      <tbody>
        {hardware.map(({ name, count, where }) => (
          <tr key={`${name} ${count} ${where}`}>
            <th scope="row">
              <bdi>{name}</bdi>
            </th>
            <td>{count}</td>
            <td>
              <bdi>{where}</bdi>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </>
);

const Price = ({ price }: { readonly price: NonNullable<ReviewShop['price']> }) => (
  <>
    <h2>Price</h2>
    <table aria-label="Price">
      <tbody>
        {price.rows.map(({ what, amount }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td className="figure">{amount}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">total</th>
          <td className="figure">
            <strong>{price.total}</strong>
          </td>
        </tr>
      </tbody>
    </table>
    <ul className="lines">
      {price.notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  </>
);

/** Only in a copy whose maker ticked something of it. */
export const ShopPanel = () => {
  const shop = useReview((state) => state.data.shop);
  if (!shop) return null;
  return (
    <>
      {shop.price === null ? null : <Price price={shop.price} />}
      {shop.parts.length > 0 ? <Parts parts={shop.parts} /> : null}
      {shop.hardware.length > 0 ? <Hardware hardware={shop.hardware} /> : null}
    </>
  );
};
