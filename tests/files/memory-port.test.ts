import { memoryPort } from '../../src/files/store/memory-port.ts';
import { storeContract } from './store-contract.ts';

storeContract('memory', async () => memoryPort());
